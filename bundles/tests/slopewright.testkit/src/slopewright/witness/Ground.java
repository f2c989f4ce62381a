package slopewright.witness;

/**
 * Levels along the site.
 *
 * @param runway profile of the runway centre line above the threshold
 * @param site ground where the units stand, above the threshold
 * @param lensAboveGroundM height of the lens centres above that ground, metres
 */
public record Ground(GroundLine runway, GroundLine site, double lensAboveGroundM) {

    /** Runway level with the threshold, lenses at a fixed height above the threshold in metres. */
    public static Ground lensAt(double lensHeightM) {
        return new Ground(GroundLine.level(0), GroundLine.level(0), lensHeightM);
    }

    /** Runway and site rising alike, per cent; lenses at a height above ground in metres. */
    public static Ground sloping(double slopePercent, double lensAboveGroundM) {
        GroundLine line = GroundLine.uniform(slopePercent);
        return new Ground(line, line, lensAboveGroundM);
    }

    /** Height of a lens that stands at a distance, above the threshold, metres. */
    public double lensM(double alongM) {
        return site.heightM(alongM) + lensAboveGroundM;
    }
}
