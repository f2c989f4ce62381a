package slopewright.ui.plan.internal;

/** The layers of a plan, the lowest first. */
public enum PlanLayer {
    /** Pictures under all. */
    IMAGES("images"),
    /** Strips, runways, helipads. */
    GROUND("ground"),
    /** The grid. */
    GRID("grid"),
    /** Edges of taxiways and aprons. */
    TAXIWAYS("taxiways"),
    /** Ground levels. */
    LEVELS("levels"),
    /** Outlines of obstacle surfaces. */
    SURFACES("surfaces"),
    /** Obstacles. */
    OBSTACLES("obstacles"),
    /** Beams of light units. */
    BEAMS("beams"),
    /** Dimensions of approach aids. */
    DIMENSIONS("dimensions"),
    /** Approach aids and glide-path antennas. */
    AIDS("aids"),
    /** Light units. */
    UNITS("units"),
    /** The pilot's eye. */
    EYE("eye"),
    /** Marks at elements that rules find something about. */
    REMARKS("remarks"),
    /** Scale bar, north arrow, legend and notices. */
    OVERLAY("overlay");

    private final String key;

    PlanLayer(String key) {
        this.key = key;
    }

    /** Returns what it is called. */
    public String label() {
        return Messages.get("layer." + key);
    }
}
