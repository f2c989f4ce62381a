package slopewright.evaluation.site;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import slopewright.geometry.FramePoint;
import slopewright.model.Aerodrome;
import slopewright.model.AeroplaneGroup;
import slopewright.model.GlidePathAid;
import slopewright.model.Place;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;

/** Makes the runway of a new site: the end that is known, and the other one where its elevation is. */
final class RunwayParts {
    private static final Pattern DESIGNATOR = Pattern.compile("(0[1-9]|[12][0-9]|3[0-6])([LCR]?)");
    private static final int HALF_TURN = 18;

    private final NewSite site;
    private final Aerodrome aerodrome;

    RunwayParts(NewSite site, Aerodrome aerodrome) {
        this.site = site;
        this.aerodrome = aerodrome;
    }

    /** Returns the designator of the other end: half a turn on, left and right exchanged; empty where the first one is none. */
    static Optional<String> opposite(String designator) {
        Matcher found = DESIGNATOR.matcher(designator.strip());
        if (!found.matches()) {
            return Optional.empty();
        }
        int tens = (Integer.parseInt(found.group(1)) + HALF_TURN - 1) % (2 * HALF_TURN) + 1;
        String side = switch (found.group(2)) {
            case "L" -> "R";
            case "R" -> "L";
            default -> found.group(2);
        };
        return Optional.of(String.format(Locale.ROOT, "%02d%s", tens, side));
    }

    void build(SiteNames names, String groupName, Place threshold) {
        SlopewrightFactory make = SlopewrightFactory.eINSTANCE;
        Runway runway = make.createRunway();
        runway.setName(names.runway());
        runway.setDesignator(site.runwayDesignator());
        runway.setLengthM(number(SiteNumber.LENGTH));
        runway.setWidthM(number(SiteNumber.WIDTH));
        runway.setCodeNumber(site.code());
        runway.setPaved(true);
        aerodrome.getRunways().add(runway);
        AeroplaneGroup group = make.createAeroplaneGroup();
        group.setName(groupName);
        group.setEyeToWheelM(number(SiteNumber.EYE_TO_WHEEL));
        group.setEyeToAntennaM(site.hasGlidePath() ? number(SiteNumber.EYE_TO_ANTENNA) : null);
        aerodrome.getAeroplaneGroups().add(group);
        RunwayEnd end = end(runway, group, site.designator());
        end.setTrueBearingDeg(number(SiteNumber.BEARING));
        end.setThresholdElevationM(number(SiteNumber.ELEVATION));
        end.setThreshold(threshold);
        if (site.hasGlidePath()) {
            GlidePathAid path = make.createGlidePathAid();
            path.setName(names.glidePath());
            path.setPathAngleDeg(number(SiteNumber.SLOPE));
            path.setReferenceDatumHeightM(number(SiteNumber.GLIDE_PATH_HEIGHT));
            end.setGlidePath(path);
        }
        if (number(SiteNumber.OTHER_ELEVATION) != null) {
            other(runway, group, end);
        }
    }

    private RunwayEnd end(Runway runway, AeroplaneGroup group, String designator) {
        RunwayEnd end = SlopewrightFactory.eINSTANCE.createRunwayEnd();
        end.setDesignator(designator);
        end.setDesiredSlopeDeg(number(SiteNumber.SLOPE));
        end.setApproachType(site.approach());
        runway.getEnds().add(end);
        end.getRegularGroups().add(group);
        return end;
    }

    /** The other threshold lies straight ahead of the first, as far as the runway is long; its bearing follows from both. */
    private void other(Runway runway, AeroplaneGroup group, RunwayEnd first) {
        RunwayEnd end = end(runway, group, opposite(site.designator()).orElse(null));
        Double elevationM = number(SiteNumber.OTHER_ELEVATION);
        end.setThresholdElevationM(elevationM);
        if (runway.getLengthM() == null) {
            return;
        }
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        try {
            SiteFrame frame = SiteFrame.of(first);
            frame.fromFrame(new FramePoint(runway.getLengthM(), 0, elevationM - frame.originElevationM()), place);
        } catch (SitingException e) {
            return;
        }
        end.setThreshold(place);
    }

    private Double number(SiteNumber wanted) {
        return site.number(wanted).isPresent() ? Double.valueOf(site.number(wanted).getAsDouble()) : null;
    }
}
