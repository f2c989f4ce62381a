package slopewright.drawing.pilot;

import slopewright.drawing.scene.Ink;

/** How light it is in a pilot's view; colours are those of a picture, not of a measurement. */
public enum Daylight {
    /** Bright day: runway and markings are seen, lights are not stronger than their surroundings. */
    DAY(Ink.SKY_DAY, Ink.LAND_DAY, Ink.PAVEMENT_DAY, Ink.MARKING, Ink.PAPER, false),
    /** Dusk: runway and markings are seen, lights stand out. */
    DUSK(Ink.SKY, Ink.LAND, Ink.PAVEMENT, Ink.MARKING, Ink.PAPER, false),
    /** Night: runway edge, threshold and end lights are seen rather than the runway. */
    NIGHT(Ink.SKY_NIGHT, Ink.LAND_NIGHT, Ink.PAVEMENT_NIGHT, Ink.MARKING_NIGHT, Ink.PAPER, true);

    private final Ink sky;
    private final Ink land;
    private final Ink pavement;
    private final Ink marking;
    private final Ink letters;
    private final boolean runwayLights;

    Daylight(Ink sky, Ink land, Ink pavement, Ink marking, Ink letters, boolean runwayLights) {
        this.sky = sky;
        this.land = land;
        this.pavement = pavement;
        this.marking = marking;
        this.letters = letters;
        this.runwayLights = runwayLights;
    }

    /** Returns what the sky is painted with. */
    public Ink sky() {
        return sky;
    }

    /** Returns what the land is painted with. */
    public Ink land() {
        return land;
    }

    /** Returns what runways and pads are painted with. */
    public Ink pavement() {
        return pavement;
    }

    /** Returns what markings are painted with. */
    public Ink marking() {
        return marking;
    }

    /** Returns what names of lights are written with. */
    public Ink letters() {
        return letters;
    }

    /** Tells whether lights of the runway are lit. */
    public boolean runwayLights() {
        return runwayLights;
    }
}
