package slopewright.drawing.scene;

/** What a mark stands for; painters turn it into colour and layer. */
public enum Ink {
    /** Nothing is drawn. */
    NONE("00000000", "NONE", 7),
    /** Paper. */
    PAPER("ffffff", "PAPER", 7),
    /** Text and dimension lines. */
    TEXT("1d2730", "TEXT", 7),
    /** Dimension lines. */
    DIMENSION("5a6b7a", "DIMENSION", 8),
    /** Runway, FATO and TLOF. */
    PAVEMENT("c9cfd4", "PAVEMENT", 8),
    /** Painted markings. */
    MARKING("ffffff", "MARKING", 7),
    /** Edges of taxiways and aprons. */
    TAXIWAY("8f9aa3", "TAXIWAY", 9),
    /** Centre line and its extension. */
    AXIS("5a6b7a", "AXIS", 8),
    /** Body of a light unit. */
    UNIT("0f4c5c", "UNIT", 4),
    /** White light. */
    WHITE("f2d98b", "LIGHT_WHITE", 2),
    /** Red light. */
    RED("c43131", "LIGHT_RED", 1),
    /** Green light. */
    GREEN("2f8f4e", "LIGHT_GREEN", 3),
    /** Amber light. */
    AMBER("e09a1f", "LIGHT_AMBER", 30),
    /** On-slope corridor. */
    CORRIDOR("d9ead8", "CORRIDOR", 3),
    /** Obstacle surface. */
    SURFACE("7a4fa3", "SURFACE", 6),
    /** Obstacle below the surface. */
    OBSTACLE("6b5b45", "OBSTACLE", 32),
    /** Obstacle through the surface. */
    PENETRATION("c43131", "PENETRATION", 1),
    /** Ground. */
    GROUND("8a7350", "GROUND", 33),
    /** Path of the wheels. */
    WHEELS("2b6cb0", "WHEELS", 5),
    /** Electronic glide path. */
    GLIDE_PATH("b0762b", "GLIDE_PATH", 30),
    /** Sky behind a pilot's view. */
    SKY("26323d", "SKY", 250),
    /** Land behind a pilot's view. */
    LAND("3b4636", "LAND", 251),
    /** Sky behind a pilot's view by day. */
    SKY_DAY("a9c8e2", "SKY", 250),
    /** Land behind a pilot's view by day. */
    LAND_DAY("7d8f5e", "LAND", 251),
    /** Runway in a pilot's view by day. */
    PAVEMENT_DAY("7f868c", "PAVEMENT", 8),
    /** Sky behind a pilot's view by night. */
    SKY_NIGHT("0a0f16", "SKY", 250),
    /** Land behind a pilot's view by night. */
    LAND_NIGHT("11160f", "LAND", 251),
    /** Runway in a pilot's view by night. */
    PAVEMENT_NIGHT("1d2124", "PAVEMENT", 8),
    /** Markings in a pilot's view by night. */
    MARKING_NIGHT("4a4f54", "MARKING", 7);

    private final String rgb;
    private final String layer;
    private final int index;

    Ink(String rgb, String layer, int index) {
        this.rgb = rgb;
        this.layer = layer;
        this.index = index;
    }

    /** Returns the colour as six hexadecimal digits: red, green, blue. */
    public String rgb() {
        return rgb;
    }

    /** Returns the name of its layer in a drawing file. */
    public String layer() {
        return layer;
    }

    /** Returns its colour number in a drawing file. */
    public int index() {
        return index;
    }
}
