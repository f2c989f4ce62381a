package slopewright.checks;

import slopewright.model.EquipmentType;
import slopewright.model.LightColour;
import slopewright.model.MeasuredIntensity;
import slopewright.model.SlopewrightFactory;

/**
 * Measurements of an invented unit that reaches the ends of every printed contour of rows, of the T form and of the sector unit (Annex 14
 * Vol I, 9th ed., Fig A2-22 and A2-23; Vol II, 4th ed., Fig 5-11), and a little more.
 */
final class MeasuredBeam {
    private final EquipmentType type;

    private MeasuredBeam(EquipmentType type) {
        this.type = type;
    }

    /** Puts what a unit of a family needs into a type of equipment, in place of what is there, as strong as the type is stated to be. */
    static void of(EquipmentType type, String family) {
        of(type, family, family.equals("heliport-sector") ? 6 : family.startsWith("t-form") ? 1 : 3);
    }

    /** Puts so many times what a unit of a family needs into a type of equipment. */
    static void of(EquipmentType type, String family, int times) {
        MeasuredBeam beam = new MeasuredBeam(type);
        type.getIntensities().clear();
        switch (family) {
            case "t-form", "t-form-abbreviated" -> beam.tForm();
            case "heliport-sector" -> beam.sector();
            default -> beam.row();
        }
        type.getIntensities().forEach(point -> point.setIntensityCd(times * point.getIntensityCd()));
    }

    /** The circle of 2 degrees, then 4 by 2.5, 6 by 3 and 8 by 3.5 degrees; white three times the red. */
    private void row() {
        add(LightColour.RED, 0, 0, 20_000);
        add(LightColour.WHITE, 0, 0, 60_000);
        row(2, 2, 20_000);
        row(4, 2.5, 12_000);
        row(6, 3, 9_000);
        row(8, 3.5, 5_000);
    }

    /** 1, 2, 3.7, 4.5 and 5 degrees to the side. */
    private void tForm() {
        add(LightColour.WHITE, 0, 0, 90_000);
        both(LightColour.WHITE, 1, 85_000);
        both(LightColour.WHITE, 2, 75_000);
        both(LightColour.WHITE, 3.7, 45_000);
        both(LightColour.WHITE, 4.5, 30_000);
        both(LightColour.WHITE, 5, 10_000);
    }

    /** Ellipses of 3 by 2, 6 by 4, 9 by 6, 12 by 8 and 15 by 10 degrees, green above and red below. */
    private void sector() {
        add(LightColour.GREEN, 0, 0, 10_000);
        sector(3, 2, 10_000);
        sector(6, 4, 7_000);
        sector(9, 6, 4_000);
        sector(12, 8, 2_000);
        sector(15, 10, 500);
    }

    private void row(double azimuthDeg, double elevationDeg, double redCd) {
        both(LightColour.RED, azimuthDeg, redCd);
        add(LightColour.RED, 0, -elevationDeg, redCd);
        add(LightColour.WHITE, 0, elevationDeg, 3 * redCd);
    }

    private void sector(double azimuthDeg, double elevationDeg, double candela) {
        both(LightColour.GREEN, azimuthDeg, candela);
        add(LightColour.GREEN, 0, elevationDeg, candela);
        add(LightColour.RED, 0, -elevationDeg, candela);
    }

    private void both(LightColour colour, double azimuthDeg, double candela) {
        add(colour, -azimuthDeg, 0, candela);
        add(colour, azimuthDeg, 0, candela);
    }

    private void add(LightColour colour, double azimuthDeg, double elevationDeg, double candela) {
        MeasuredIntensity point = SlopewrightFactory.eINSTANCE.createMeasuredIntensity();
        point.setColour(colour);
        point.setAzimuthDeg(azimuthDeg);
        point.setElevationDeg(elevationDeg);
        point.setIntensityCd(candela);
        type.getIntensities().add(point);
    }
}
