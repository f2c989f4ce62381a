package slopewright.ui.plan.internal;

/** The layers of a plan, the lowest first. */
public enum PlanLayer {
    /** Strips, runways, helipads. */
    GROUND("Runways and helipads"),
    /** Edges of taxiways and aprons. */
    TAXIWAYS("Taxiway edges"),
    /** Ground levels. */
    LEVELS("Ground levels"),
    /** Outlines of obstacle surfaces. */
    SURFACES("Obstacle surfaces"),
    /** Obstacles. */
    OBSTACLES("Obstacles"),
    /** Approach aids and glide-path antennas. */
    AIDS("Approach aids"),
    /** Light units. */
    UNITS("Light units"),
    /** Marks at elements that rules find something about. */
    REMARKS("Findings"),
    /** Scale bar, north arrow, legend and notices. */
    OVERLAY("Scale, north and legend");

    private final String label;

    PlanLayer(String label) {
        this.label = label;
    }

    /** Returns what it is called. */
    public String label() {
        return label;
    }
}
