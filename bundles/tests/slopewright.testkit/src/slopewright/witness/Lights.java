package slopewright.witness;

import java.util.List;

/** What each kind of light shows by elevation. */
public final class Lights {
    private static final double FLOOR_DEG = -90;
    private static final double CEILING_DEG = 90;

    private Lights() {
    }

    /** Red up to the setting and white above it (rows 5.3.5.23, bars US pack 2.1), degrees. */
    public static List<Sector> change(double settingDeg) {
        return List.of(new Sector(FLOOR_DEG, settingDeg, Colour.RED, State.STEADY),
            new Sector(settingDeg, CEILING_DEG, Colour.WHITE, State.STEADY));
    }

    /** Wing bar: red from the horizon to 1 deg 54', white from there to 6 degrees (5.3.5.11). */
    public static List<Sector> wingBar(Edition edition, Family family) {
        double red = Transcription.number(edition, family, "bar.red-top-deg");
        double top = Transcription.number(edition, family, "bar.white-top-deg");
        return List.of(new Sector(0, red, Colour.RED, State.STEADY), new Sector(red, top, Colour.WHITE, State.STEADY));
    }

    /** Fly-up unit: red below 1 deg 54', white from there up to, but not at, its cut-off (5.3.5.8, .11), degrees. */
    public static List<Sector> flyUp(Edition edition, Family family, double cutOffDeg) {
        double red = Transcription.number(edition, family, "bar.red-top-deg");
        return List.of(new Sector(0, red, Colour.RED, State.STEADY),
            new Sector(red, Math.nextDown(cutOffDeg), Colour.WHITE, State.STEADY));
    }

    /** Fly-down unit: white above its cut-off up to 6 degrees (5.3.5.11), degrees. */
    public static List<Sector> flyDown(Edition edition, Family family, double cutOffDeg) {
        double top = Transcription.number(edition, family, "fly-down.top-deg");
        return List.of(new Sector(cutOffDeg, top, Colour.WHITE, State.STEADY));
    }

    /**
     * Heliport sector unit, bottom to top: flashing red, red of 15', green of 45' about the slope, flashing green (Vol II
     * Fig 5-14, 5.3.6.10-11), degrees.
     */
    public static List<Sector> heliportSector(Edition edition, double slopeDeg) {
        double half = Transcription.number(edition, Family.HELIPORT_SECTOR, "on-slope-min") / 120;
        double below = Transcription.number(edition, Family.HELIPORT_SECTOR, "slightly-below-min") / 60;
        double low = slopeDeg - half;
        return List.of(new Sector(FLOOR_DEG, low - below, Colour.RED, State.FLASHING),
            new Sector(low - below, low, Colour.RED, State.STEADY),
            new Sector(low, slopeDeg + half, Colour.GREEN, State.STEADY),
            new Sector(slopeDeg + half, CEILING_DEG, Colour.GREEN, State.FLASHING));
    }

    /** Unit of a heliport pair: red, green of 2 degrees, white; {@code greenFromDeg} is the lower edge (US pack 2.9). */
    public static List<Sector> pairUnit(Edition edition, double greenFromDeg) {
        double to = greenFromDeg + Transcription.number(edition, Family.HELIPORT_PAIR, "green-width-deg");
        return List.of(new Sector(FLOOR_DEG, greenFromDeg, Colour.RED, State.STEADY),
            new Sector(greenFromDeg, to, Colour.GREEN, State.STEADY),
            new Sector(to, CEILING_DEG, Colour.WHITE, State.STEADY));
    }

    /** Tri-colour unit: red, green, amber (US pack 2.5); edges of the unit in hand. */
    public static List<Sector> triColour(Edges edges) {
        return List.of(new Sector(FLOOR_DEG, edges.lowerDeg(), Colour.RED, State.STEADY),
            new Sector(edges.lowerDeg(), edges.upperDeg(), Colour.GREEN, State.STEADY),
            new Sector(edges.upperDeg(), CEILING_DEG, Colour.AMBER, State.STEADY));
    }

    /** Pulsating unit: pulsating red, steady red, steady white, pulsating white (US pack 2.6); edges of the unit in hand. */
    public static List<Sector> pulsating(Edges edges) {
        return List.of(new Sector(FLOOR_DEG, edges.lowestDeg(), Colour.RED, State.PULSATING),
            new Sector(edges.lowestDeg(), edges.lowerDeg(), Colour.RED, State.STEADY),
            new Sector(edges.lowerDeg(), edges.upperDeg(), Colour.WHITE, State.STEADY),
            new Sector(edges.upperDeg(), CEILING_DEG, Colour.WHITE, State.PULSATING));
    }

    /** Pulse length of a pulsating unit at a deviation from the path edge, seconds: fixed rate, shrinking length (US pack 2.6). */
    public static double pulseOnS(Edition edition, double deviationDeg, double limitDeg) {
        double periodS = 1 / Transcription.number(edition, Family.PULSATING, "frequency-hz");
        return periodS * Math.max(0, 1 - deviationDeg / limitDeg);
    }
}
