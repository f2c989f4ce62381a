package slopewright.witness;

/** Intensities and the law of Allard. */
public final class Light {
    private Light() {
    }

    /**
     * Least intensity of a row in a direction, candela: red under {@code icao:9th} Fig A2-23 ({@code colour} is "red"), red or
     * white under {@code faa:2022} Fig 3-1. Contours have straight flanks and half-round ends; zero outside all of them.
     */
    public static double rowCd(Edition edition, Family family, String colour, double azimuthDeg, double elevationDeg) {
        for (int ring = 1; Transcription.maybe(edition, family.key(), "intensity." + ring + "." + colour + "-cd").isPresent(); ring++) {
            String name = "intensity." + ring + ".";
            double half = Transcription.number(edition, family, name + "azimuth-deg");
            double high = Transcription.number(edition, family, name + "elevation-deg");
            double beyond = Math.max(0, Math.abs(azimuthDeg) - (half - high));
            if (Math.hypot(beyond, elevationDeg) <= high) {
                return Transcription.number(edition, family, name + colour + "-cd");
            }
        }
        return 0;
    }

    /** Least intensity of a heliport sector unit in a direction, candela (Vol II Fig 5-11, ellipses); zero outside. */
    public static double sectorCd(Edition edition, double azimuthDeg, double elevationDeg) {
        for (int ring = 1; ring <= 5; ring++) {
            String name = "intensity." + ring + ".";
            double half = Transcription.number(edition, Family.HELIPORT_SECTOR, name + "azimuth-deg");
            double high = Transcription.number(edition, Family.HELIPORT_SECTOR, name + "elevation-deg");
            if (Math.hypot(azimuthDeg / half, elevationDeg / high) <= 1) {
                return Transcription.number(edition, Family.HELIPORT_SECTOR, name + "cd");
            }
        }
        return 0;
    }

    /** Intensity needed to give an illuminance in lux at a range in metres, transmission a nautical mile {@code perMile}. */
    public static double allardCd(double illuminanceLx, double rangeM, double perMile) {
        return illuminanceLx * rangeM * rangeM / Math.pow(perMile, rangeM / Angles.NAUTICAL_MILE_M);
    }

    /** Range in metres at which an intensity gives an illuminance in lux, found by walking out. */
    public static double rangeM(double intensityCd, double illuminanceLx, double perMile) {
        return Angles.firstTrue(1, 1_000_000, 50, range -> allardCd(illuminanceLx, range, perMile) >= intensityCd);
    }
}
