package slopewright.witness;

/**
 * What is to be built and across what.
 *
 * @param edition rule text
 * @param family kind
 * @param variant settings
 * @param slopeDeg approach slope, degrees (the lower path of three bars)
 * @param runwayWidthM runway width, metres (zero measures from the centre line)
 * @param side side or sides
 * @param lateral lateral choice of a row
 * @param units number of units of bars (2, 4, 12; 6, 16); ignored elsewhere
 * @param barSpacingM spacing of bars, or of the panels, metres; NaN for the printed one
 * @param edges sector edges of a tri-colour or pulsating unit, else null
 * @param axisTurnDeg turn of the axis, degrees
 */
public record Plan(Edition edition, Family family, Variant variant, double slopeDeg, double runwayWidthM, Side side,
        Lateral.Choice lateral, int units, double barSpacingM, Edges edges, double axisTurnDeg) {

    /** An ordinary plan: standard settings and places, on the left. */
    public static Plan of(Edition edition, Family family, double slopeDeg, double runwayWidthM) {
        int count = family == Family.THREE_BAR ? 6 : 4;
        return new Plan(edition, family, Variant.STANDARD, slopeDeg, runwayWidthM, Side.LEFT, Lateral.Choice.STANDARD, count,
            Double.NaN, null, 0);
    }

    /** The same with other settings. */
    public Plan with(Variant other) {
        return new Plan(edition, family, other, slopeDeg, runwayWidthM, side, lateral, units, barSpacingM, edges, axisTurnDeg);
    }

    /** The same with another lateral choice. */
    public Plan with(Lateral.Choice other) {
        return new Plan(edition, family, variant, slopeDeg, runwayWidthM, side, other, units, barSpacingM, edges, axisTurnDeg);
    }

    /** The same on another side. */
    public Plan with(Side other) {
        return new Plan(edition, family, variant, slopeDeg, runwayWidthM, other, lateral, units, barSpacingM, edges, axisTurnDeg);
    }

    /** The same with sector edges. */
    public Plan with(Edges other) {
        return new Plan(edition, family, variant, slopeDeg, runwayWidthM, side, lateral, units, barSpacingM, other, axisTurnDeg);
    }

    /** The same with a number of units and a spacing of bars in metres. */
    public Plan withBars(int otherUnits, double otherSpacingM) {
        return new Plan(edition, family, variant, slopeDeg, runwayWidthM, side, lateral, otherUnits, otherSpacingM, edges,
            axisTurnDeg);
    }

    /** The same with the axis turned, degrees. */
    public Plan turned(double otherDeg) {
        return new Plan(edition, family, variant, slopeDeg, runwayWidthM, side, lateral, units, barSpacingM, edges, otherDeg);
    }
}
