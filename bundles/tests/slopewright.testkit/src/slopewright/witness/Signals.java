package slopewright.witness;

import java.util.ArrayList;
import java.util.List;

/** What an eye at a place sees. */
public final class Signals {
    private Signals() {
    }

    /** All lights as seen from the eye, with their meaning. */
    public static View view(Layout layout, Eye eye) {
        return view(layout, eye, 0);
    }

    /** The same with every setting lowered by an allowance in minutes of arc. */
    static View view(Layout layout, Eye eye, double allowanceMin) {
        List<Seen> list = new ArrayList<>();
        for (LightUnit unit : layout.units()) {
            double[] bearing = bearing(layout, unit.alongM(), unit.rightM(), eye);
            double elevationDeg = Math.toDegrees(Math.atan2(eye.heightM() - unit.heightM(), bearing[0]));
            boolean behind = bearing[0] <= 0;
            boolean aside = layout.beamHalfWidthDeg() < 180
                && Math.abs(Math.toDegrees(Math.atan2(bearing[1], bearing[0]))) > layout.beamHalfWidthDeg();
            Sector sector = behind || aside ? null : unit.shown(elevationDeg + allowanceMin / 60);
            list.add(new Seen(unit.id(), unit.bar(), sector == null ? Colour.NONE : sector.colour(),
                sector == null ? State.OFF : sector.state(), elevationDeg));
        }
        double[] bearing = bearing(layout, layout.referenceAlongM(), 0, eye);
        double elevationDeg = Math.toDegrees(Math.atan2(eye.heightM() - layout.referenceHeightM(), bearing[0]));
        Meaning meaning = Meanings.of(layout.family(), list, false);
        Meaning upper = layout.family() == Family.THREE_BAR ? Meanings.of(layout.family(), list, true) : meaning;
        return new View(list, meaning, upper, elevationDeg);
    }

    /** Whether a light is inside its colour change for the eye: within half the width of a sector edge, width in minutes. */
    public static boolean inTransition(Layout layout, LightUnit unit, Eye eye, double widthMin) {
        double[] bearing = bearing(layout, unit.alongM(), unit.rightM(), eye);
        double elevationDeg = Math.toDegrees(Math.atan2(eye.heightM() - unit.heightM(), bearing[0]));
        for (Sector sector : unit.sectors()) {
            if (Math.abs(elevationDeg - sector.fromDeg()) <= widthMin / 120) {
                return true;
            }
        }
        return false;
    }

    /** Plan distance of the eye from a place, along and across the turned axis, metres. */
    static double[] bearing(Layout layout, double alongM, double rightM, Eye eye) {
        double turn = Math.toRadians(layout.axisTurnDeg());
        double dAlong = eye.alongM() - alongM;
        double dRight = eye.rightM() - rightM;
        return new double[] {-dAlong * Math.cos(turn) + dRight * Math.sin(turn), dAlong * Math.sin(turn) + dRight * Math.cos(turn)};
    }
}
