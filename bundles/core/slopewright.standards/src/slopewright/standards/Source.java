package slopewright.standards;

/**
 * A document that values come from.
 *
 * @param key     short name, unique
 * @param title   the title as reports print it, with the words "not read" where the text itself was not seen
 * @param edition edition or date
 */
public record Source(String key, String title, String edition) {
}
