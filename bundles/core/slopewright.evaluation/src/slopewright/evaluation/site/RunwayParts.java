package slopewright.evaluation.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
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
    /** From these lengths on the code number is 2, 3 and 4. */
    private static final List<Double> CODE_LENGTHS_M = List.of(800.0, 1200.0, 1800.0);

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

    /** Returns the code number of a runway by its length, as long as nobody says which aeroplanes it is for: Annex 14 Vol I, table 1-1. */
    static int codeOf(double lengthM) {
        return 1 + (int) CODE_LENGTHS_M.stream().filter(least -> lengthM >= least).count();
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
        site.known().ifPresent(known -> openData(runway, known, names));
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
        site.known().ifPresent(known -> displaced(end, known.first()));
        if (site.hasGlidePath()) {
            GlidePathAid path = make.createGlidePathAid();
            path.setName(names.glidePath());
            path.setPathAngleDeg(number(SiteNumber.SLOPE));
            path.setReferenceDatumHeightM(number(SiteNumber.GLIDE_PATH_HEIGHT));
            end.setGlidePath(path);
        }
        if (site.knownOther().isPresent()) {
            other(runway, group, site.knownOther().get());
        } else if (number(SiteNumber.OTHER_ELEVATION) != null) {
            other(runway, group, end);
        }
    }

    /** Says of the runway where its figures come from, and what does not fit together in them. */
    private void openData(Runway runway, KnownRunway known, SiteNames names) {
        runway.setPaved(known.isPaved().orElse(null));
        runway.setSurface(known.surface().orElse(null));
        runway.setOpenDataSource(known.source());
        runway.setOpenDataLicence(known.licence());
        List<String> remarks = new ArrayList<>();
        remarks.add(names.words().apply(Message.of("open-data.taken", Words.name(known.source()), Words.name(known.licence()))));
        known.notes().forEach(note -> remarks.add(names.words().apply(note)));
        if (runway.getCodeNumber() != null && runway.getLengthM() != null && codeOf(runway.getLengthM()) == runway.getCodeNumber()) {
            remarks.add(names.words().apply(Message.of("open-data.code-number", Words.count(runway.getCodeNumber()))));
        }
        runway.setRemarks(String.join(" ", remarks));
    }

    private static void displaced(RunwayEnd end, KnownRunway.End known) {
        end.setDisplacedThresholdM(known.displacedM().isPresent() ? Double.valueOf(known.displacedM().getAsDouble()) : null);
        end.setExtremityElevationM(known.extremityElevationM().isPresent() ? Double.valueOf(known.extremityElevationM().getAsDouble())
                : null);
    }

    /** The other end as open data have it, with the elevation that is known by now. */
    private void other(Runway runway, AeroplaneGroup group, KnownRunway.End known) {
        RunwayEnd end = end(runway, group, known.designator());
        end.setTrueBearingDeg(known.bearingDeg());
        end.setThresholdElevationM(number(SiteNumber.OTHER_ELEVATION));
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        place.setLatitudeDeg(known.latitudeDeg());
        place.setLongitudeDeg(known.longitudeDeg());
        place.setElevationM(number(SiteNumber.OTHER_ELEVATION));
        end.setThreshold(place);
        displaced(end, known);
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
