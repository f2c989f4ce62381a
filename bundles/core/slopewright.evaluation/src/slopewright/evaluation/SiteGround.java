package slopewright.evaluation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import slopewright.geometry.FramePoint;
import slopewright.geometry.Profile;
import slopewright.geometry.StoredResolution;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachHost;
import slopewright.model.GroundLevel;
import slopewright.model.ProfilePoint;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.GroundSource;
import slopewright.siting.Side;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;

/**
 * The ground under the units of an approach: the profile that somebody entered, or else the levels that were surveyed near the line of
 * the units. Levels count where they lie beside the runway on the side of the units, from its edge to {@value #CORRIDOR_M} m beyond it (at
 * a helipad: within that distance of the axis); levels less than {@value #ONE_PLACE_M} m apart along the runway are one place at their mean
 * height. Between places the ground is straight; beyond the first and the last nothing is known.
 *
 * @param profile heights above the threshold or the TLOF, places counted from there in the landing direction; empty where nothing is known
 * @param source  where the profile comes from
 * @param levels  the surveyed levels that it follows from; none where it follows from something else
 * @param notes   what a reader must know of it
 */
public record SiteGround(Optional<Profile> profile, GroundSource source, List<GroundLevel> levels, List<Message> notes) {

    /** How far beside the edge of the runway levels belong to the ground of the units, metres. */
    public static final double CORRIDOR_M = 60;
    /** Levels so near along the runway are one place, metres. */
    public static final double ONE_PLACE_M = 1;
    /** What a survey of ground levels may be out without contradicting another: the level difference of Annex 14 Fig 5-19 e, metres. */
    public static final double SURVEY_TOLERANCE_M = 0.05;

    private static final double HALF_WIDTH_UNKNOWN_M = 0;

    /** Copies the lists. */
    public SiteGround {
        levels = List.copyOf(levels);
        notes = List.copyOf(notes);
    }

    /**
     * A surveyed level that the entered profile contradicts.
     *
     * @param level       the level
     * @param alongM      its place from the threshold, metres
     * @param rightM      its place to the right of the centre line, metres
     * @param surveyedM   its height above the threshold, metres
     * @param profileM    height of the entered profile there, metres
     * @param differenceM surveyed less entered, metres
     */
    public record Contradiction(GroundLevel level, double alongM, double rightM, double surveyedM, double profileM, double differenceM) {
    }

    /** A level in the frame of the approach. */
    private record Placed(GroundLevel level, FramePoint point) {
    }

    /**
     * Reads the ground of an approach.
     *
     * @param host the runway end or approach direction
     * @param side the side on which the units stand
     * @return the ground
     * @throws SitingException where the entered profile cannot be used; the message says why
     */
    public static SiteGround of(ApproachHost host, Side side) {
        Optional<Profile> typed = typed(host);
        if (typed.isPresent()) {
            return new SiteGround(typed, GroundSource.TYPED_PROFILE, List.of(), List.of());
        }
        if (levels(host).isEmpty()) {
            return none(List.of());
        }
        List<Placed> near;
        try {
            near = near(host, side);
        } catch (SitingException e) {
            return none(List.of(Message.of("evaluation.note.levels-without-frame", e.reason())));
        }
        Optional<Profile> surveyed = surveyed(near);
        return surveyed.map(profile -> new SiteGround(surveyed, GroundSource.SURVEYED_LEVELS, near.stream().map(Placed::level).toList(),
                List.of(Message.of("evaluation.note.surveyed-ground", Words.count(near.size()), Words.m(profile.firstM()), Words.m(profile
                        .lastM())))))
                .orElseGet(() -> none(near.isEmpty() ? List.of() : List.of(Message.of("evaluation.note.too-few-levels"))));
    }

    private static SiteGround none(List<Message> notes) {
        return new SiteGround(Optional.empty(), GroundSource.LEVEL, List.of(), notes);
    }

    /**
     * Returns the surveyed levels that the entered profile contradicts: those near the line of the units whose height differs from it by
     * more than the tolerance of a survey and the stored resolution.
     *
     * @param host the runway end or approach direction
     * @return the levels in the order of the file; empty where there is no entered profile or no level, so that nothing is compared
     * @throws SitingException where the profile cannot be used, there is no frame, or a level has no place in it; the message says why
     */
    public static List<Contradiction> contradictions(ApproachHost host) {
        List<Contradiction> found = new ArrayList<>();
        Optional<Profile> typed = typed(host);
        if (typed.isEmpty() || levels(host).isEmpty() || host.getAids().isEmpty()) {
            return found;
        }
        List<Side> sides = host.getAids().stream().map(AidRequests::side).distinct().toList();
        for (Placed placed : near(host, sides.size() == 1 ? sides.get(0) : Side.BOTH)) {
            FramePoint point = placed.point();
            if (typed.get().covers(point.alongM())) {
                double profile = typed.get().heightAt(point.alongM());
                double difference = point.heightM() - profile;
                if (Math.abs(difference) > SURVEY_TOLERANCE_M + StoredResolution.LENGTH_M) {
                    found.add(new Contradiction(placed.level(), point.alongM(), point.rightM(), point.heightM(), profile, difference));
                }
            }
        }
        return found;
    }

    private static Optional<Profile> typed(ApproachHost host) {
        if (!(host instanceof RunwayEnd end) || end.getThresholdElevationM() == null) {
            return Optional.empty();
        }
        return RunwayProfiles.profile(end.getSiteProfile(), ProfilePoint::getChainageM, end.getThresholdElevationM(),
                "evaluation.refused.site-profile", end);
    }

    private static List<GroundLevel> levels(ApproachHost host) {
        return Projects.project(host).map(Project::getAerodrome).map(Aerodrome::getGroundLevels).map(List::copyOf).orElse(List.of());
    }

    private static List<Placed> near(ApproachHost host, Side side) {
        SiteFrame frame = SiteFrame.of(host);
        double edge = Projects.runway(host).map(Runway::getWidthM).map(width -> width / 2).orElse(HALF_WIDTH_UNKNOWN_M);
        boolean anySide = side == Side.BOTH || Projects.helipad(host).isPresent();
        List<Placed> near = new ArrayList<>();
        for (GroundLevel level : levels(host)) {
            if (level.getPlace() != null && level.getPlace().getElevationM() != null) {
                FramePoint point = frame.toFrame(level.getPlace(), level.getPlace().getElevationM());
                double outward = anySide ? Math.abs(point.rightM()) : side == Side.LEFT ? -point.rightM() : point.rightM();
                boolean atHelipad = Projects.helipad(host).isPresent();
                if (outward <= edge + CORRIDOR_M && (atHelipad || outward >= edge)) {
                    near.add(new Placed(level, point));
                }
            }
        }
        return near;
    }

    private static Optional<Profile> surveyed(List<Placed> near) {
        List<FramePoint> sorted = near.stream().map(Placed::point).sorted(Comparator.comparingDouble(FramePoint::alongM)).toList();
        List<Double> along = new ArrayList<>();
        List<Double> heights = new ArrayList<>();
        for (int first = 0; first < sorted.size();) {
            int next = first;
            double alongSum = 0;
            double heightSum = 0;
            while (next < sorted.size() && sorted.get(next).alongM() - sorted.get(first).alongM() < ONE_PLACE_M) {
                alongSum += sorted.get(next).alongM();
                heightSum += sorted.get(next).heightM();
                next++;
            }
            along.add(alongSum / (next - first));
            heights.add(heightSum / (next - first));
            first = next;
        }
        if (along.size() < 2) {
            return Optional.empty();
        }
        return Optional.of(Profile.of(along.stream().mapToDouble(Double::doubleValue).toArray(),
                heights.stream().mapToDouble(Double::doubleValue).toArray()));
    }
}
