package slopewright.evaluation.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.geometry.FramePoint;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.ApproachType;
import slopewright.model.Helipad;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Projects;
import slopewright.siting.site.SiteFrame;

/** Makes the helipads of a new site with their approach directions, after a template where there is one. */
final class PadParts {
    private static final double SAFETY_AREA_SHARE = 1.5;
    private static final double HOVER_HEIGHT_M = 2;
    private static final double FULL_DEG = 360;

    private final NewSite site;
    private final Aerodrome aerodrome;

    PadParts(NewSite site, Aerodrome aerodrome) {
        this.site = site;
        this.aerodrome = aerodrome;
    }

    /** Makes the first pad, all its directions, and the further pads. */
    void build(Optional<Project> template, String padName, Place place) {
        Optional<Helipad> pattern = template.flatMap(from -> Projects.hosts(from).stream().findFirst()).flatMap(Projects::helipad);
        Helipad pad = pattern.map(EcoreUtil::copy).orElseGet(() -> fresh(padName));
        pad.getDirections().clear();
        pad.setPlace(place);
        pad.setElevationM(place.getElevationM());
        size(pad);
        site.number(SiteNumber.EYE_ABOVE_SKIDS).ifPresent(pad::setEyeAboveSkidsM);
        site.number(SiteNumber.FATO_BEARING).ifPresent(pad::setFatoBearingDeg);
        aerodrome.getHelipads().add(pad);
        Double bearing = site.number(SiteNumber.BEARING).isPresent() ? site.number(SiteNumber.BEARING).getAsDouble() : null;
        ApproachDirection first = direction(bearing, site.designator());
        pad.getDirections().add(first);
        site.furtherBearings().forEach(trueDeg -> pad.getDirections().add(direction(trueDeg, designator(trueDeg))));
        List<Helipad> others = new ArrayList<>();
        for (FurtherPad further : site.furtherPads()) {
            Helipad other = EcoreUtil.copy(pad);
            other.setName(further.name());
            other.setPlace(beside(first, further));
            other.setElevationM(further.elevationM());
            other.getDirections().clear();
            further.bearingsDeg().forEach(trueDeg -> other.getDirections().add(direction(trueDeg, designator(trueDeg))));
            others.add(other);
        }
        aerodrome.getHelipads().addAll(others);
    }

    private static Helipad fresh(String name) {
        Helipad pad = SlopewrightFactory.eINSTANCE.createHelipad();
        pad.setName(name);
        pad.setHoverHeightM(HOVER_HEIGHT_M);
        return pad;
    }

    /** A FATO as large as that of the template keeps its shape and its safety area; another one is square, with one as far around it. */
    private void size(Helipad pad) {
        if (site.number(SiteNumber.FATO).isEmpty()) {
            pad.setFatoLengthM(null);
            pad.setFatoWidthM(null);
            pad.setSafetyAreaWidthM(null);
            return;
        }
        double side = site.number(SiteNumber.FATO).getAsDouble();
        if (pad.getFatoLengthM() != null && pad.getFatoLengthM() == side) {
            return;
        }
        boolean known = pad.getSafetyAreaWidthM() != null && pad.getFatoWidthM() != null;
        pad.setSafetyAreaWidthM(known ? side + pad.getSafetyAreaWidthM() - pad.getFatoWidthM() : side * SAFETY_AREA_SHARE);
        pad.setFatoLengthM(side);
        pad.setFatoWidthM(side);
        pad.setTlofLengthM(pad.getTlofLengthM() == null ? null : Math.min(pad.getTlofLengthM(), side));
        pad.setTlofWidthM(pad.getTlofWidthM() == null ? null : Math.min(pad.getTlofWidthM(), side));
    }

    private ApproachDirection direction(Double trueDeg, String designator) {
        ApproachDirection direction = SlopewrightFactory.eINSTANCE.createApproachDirection();
        direction.setTrueBearingDeg(trueDeg);
        direction.setDesignator(designator);
        direction.setApproachType(ApproachType.VISUAL);
        site.slopeDeg().ifPresent(direction::setDesiredSlopeDeg);
        return direction;
    }

    /** Returns the designator of a landing direction: the letter of a helipad and its bearing in three digits. */
    static String designator(double trueDeg) {
        return String.format(Locale.ROOT, "H-%03d", Math.round(trueDeg) % (int) FULL_DEG);
    }

    /** Returns the place of a further pad, which is given from the first one. */
    private static Place beside(ApproachHost first, FurtherPad further) {
        SiteFrame frame = SiteFrame.of(first);
        double bearing = Math.toRadians(frame.bearingDeg());
        double along = further.eastM() * Math.sin(bearing) + further.northM() * Math.cos(bearing);
        double right = further.eastM() * Math.cos(bearing) - further.northM() * Math.sin(bearing);
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        frame.fromFrame(new FramePoint(along, right, further.elevationM() - frame.originElevationM()), place);
        place.setElevationM(further.elevationM());
        return place;
    }
}
