package slopewright.exchange.settingout;

import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.model.LightUnit;
import slopewright.model.Place;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.siting.magnetic.SiteVariation;
import slopewright.siting.site.SiteFrame;

/**
 * One unit with what a field party needs. Angles in decimal degrees, lengths in metres; null where a number is not known.
 *
 * @param aid                the aid that it belongs to
 * @param unit               the unit
 * @param place              its place in the coordinates of the aerodrome; its parts are null where they are not known
 * @param extremityAlongM    chainage from the extremity of the runway
 * @param groundElevationM   elevation of the ground under it
 * @param azimuthTrueDeg     axis of the beam from true north
 * @param azimuthMagneticDeg axis of the beam from magnetic north
 * @param azimuthGridDeg     axis of the beam from grid north; null where the aerodrome has no grid
 * @param variation          by which magnetic north was found; empty where it is not known
 */
public record SettingOutUnit(AidEvaluation aid, LightUnit unit, Place place, Double extremityAlongM, Double groundElevationM,
        Double azimuthTrueDeg, Double azimuthMagneticDeg, Double azimuthGridDeg, Optional<SiteVariation> variation) {

    private static final double SIGHT_M = 100;
    private static final double TO_MILLIMETRES = 1000;

    static SettingOutUnit of(AidEvaluation aid, LightUnit unit, Optional<SiteVariation> variation) {
        Optional<SiteFrame> frame = aid.frame().value();
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        double turn = turnDeg(aid, unit);
        Double azimuth = frame.map(found -> Angles.normaliseBearingDeg(found.bearingDeg() + 180 + turn)).orElse(null);
        Double grid = null;
        if (frame.isPresent() && unit.getAlongM() != null && unit.getRightM() != null) {
            FramePoint lens = new FramePoint(unit.getAlongM(), unit.getRightM(), 0);
            frame.get().fromFrame(lens, place);
            place.setElevationM(unit.getLensElevationM());
            grid = gridDeg(frame.get(), lens, place, turn);
        }
        Double magnetic = azimuth == null || variation.isEmpty() ? null
                : Double.valueOf(Angles.normaliseBearingDeg(azimuth - variation.get().variationDeg()));
        return new SettingOutUnit(aid, unit, place, extremityM(aid, unit), difference(unit.getLensElevationM(),
                unit.getHeightAboveGroundM()), azimuth, magnetic, grid, variation);
    }

    private static double turnDeg(AidEvaluation aid, LightUnit unit) {
        return (aid.aid().getAxisTurnDeg() == null ? 0 : aid.aid().getAxisTurnDeg())
                + (unit.getAzimuthOffsetDeg() == null ? 0 : unit.getAzimuthOffsetDeg());
    }

    private static Double difference(Double whole, Double part) {
        return whole == null || part == null ? null : Double.valueOf(whole - part);
    }

    private static Double extremityM(AidEvaluation aid, LightUnit unit) {
        return aid.host() instanceof RunwayEnd end && end.getDisplacedThresholdM() != null && unit.getAlongM() != null
                ? Double.valueOf(unit.getAlongM() + end.getDisplacedThresholdM()) : null;
    }

    /** Sights from the lens to a place down the beam, in grid coordinates. */
    private static Double gridDeg(SiteFrame frame, FramePoint lens, Place place, double turnDeg) {
        if (place.getEastM() == null) {
            return null;
        }
        double turn = Math.toRadians(turnDeg);
        Place ahead = SlopewrightFactory.eINSTANCE.createPlace();
        frame.fromFrame(new FramePoint(lens.alongM() - SIGHT_M * Math.cos(turn), lens.rightM() - SIGHT_M * Math.sin(turn), 0), ahead);
        return Angles.normaliseBearingDeg(Math.toDegrees(Math.atan2(ahead.getEastM() - place.getEastM(),
                ahead.getNorthM() - place.getNorthM())));
    }

    /** Returns the rise of the setting, millimetres in a metre, as a clinometer or a level and staff give it. */
    public Double gradientMmPerM() {
        return unit.getSettingDeg() == null ? null : Double.valueOf(TO_MILLIMETRES * Angles.tanDeg(unit.getSettingDeg()));
    }

    /**
     * Returns how high over the lens the axis of the beam passes a staff.
     *
     * @param distanceM distance of the staff before the unit, metres
     */
    public Double riseM(double distanceM) {
        return unit.getSettingDeg() == null ? null : Double.valueOf(distanceM * Angles.tanDeg(unit.getSettingDeg()));
    }

    /**
     * Returns the elevation at which the axis of the beam passes a staff.
     *
     * @param distanceM distance of the staff before the unit, metres
     */
    public Double levelM(double distanceM) {
        Double rise = riseM(distanceM);
        return rise == null || unit.getLensElevationM() == null ? null : Double.valueOf(unit.getLensElevationM() + rise);
    }
}
