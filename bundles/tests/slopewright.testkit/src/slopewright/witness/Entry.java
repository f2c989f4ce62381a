package slopewright.witness;

/**
 * One number of a rule text.
 *
 * @param edition edition
 * @param family family key, or {@code all}, or {@code wheel-clearance}
 * @param name name with unit suffix
 * @param value number
 * @param provenance published, secondary, derived or from-memory
 * @param clause clause, table or figure
 */
public record Entry(Edition edition, String family, String name, double value, String provenance, String clause) {
}
