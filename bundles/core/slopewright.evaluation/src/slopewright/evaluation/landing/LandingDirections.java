package slopewright.evaluation.landing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.PadArea;
import slopewright.evaluation.obstacles.GoverningSearch;
import slopewright.evaluation.obstacles.GoverningSearch.Standing;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.evaluation.obstacles.SurveyDays;
import slopewright.evaluation.obstacles.SurveyReach;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachDirection;
import slopewright.model.ObstacleSurvey;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
import slopewright.siting.SitingException;

/**
 * Every landing direction in whole degrees and every settable slope of an aid at a helipad under its own rule set. In each the aid is laid
 * out as if the direction were taken, and held against all that stands there: its obstacle surface, and for a portable unit, or one that is
 * dark below, the lines of sight with the unit off by its whole allowance. What nobody knows is not evaluated and never clear.
 *
 * @param directions one a whole degree from true north, 0 to 359
 * @param slopes     the slopes that were tried
 * @param sighted    whether lines of sight count beside the obstacle surface
 * @param notes      what a reader must know
 */
public record LandingDirections(List<LandingDirection> directions, SettableSlopes slopes, boolean sighted, List<Message> notes) {

    /** How many directions there are. */
    public static final int COUNT = 360;

    /** Copies the lists. */
    public LandingDirections {
        directions = List.copyOf(directions);
        notes = List.copyOf(notes);
    }

    /**
     * Looks all round.
     *
     * @param evaluation the evaluation of an aid at a helipad
     * @param slopes     the slopes to try
     * @return the directions
     * @throws SitingException where the aid is at no helipad, or there is no frame on the ground; the message says why
     */
    public static LandingDirections of(AidEvaluation evaluation, SettableSlopes slopes) {
        if (!(evaluation.host() instanceof ApproachDirection)) {
            throw new SitingException(Message.of("landing.no-helipad", ElementNames.of(evaluation.host())));
        }
        return new Search(evaluation, slopes).run();
    }

    /** Looks all round over the range of the unit in hand in the usual steps. */
    public static LandingDirections of(AidEvaluation evaluation) {
        return of(evaluation, SettableSlopes.of(evaluation, SettableSlopes.USUAL_STEP_DEG));
    }

    /** Returns the direction nearest to a bearing, decimal degrees from true north. */
    public LandingDirection at(double trueDeg) {
        return directions.get(Math.floorMod(Math.round(trueDeg), COUNT));
    }

    /**
     * Returns the sectors in which every direction is clear from a whole degree of slope on, up to the same whole degree where steeper ones
     * are not: rounded up and down to slopes that are clear, or as they are where no whole degree lies between.
     */
    public List<ClearSector> sectors() {
        List<Clear> clear = directions.stream().map(this::rounded).toList();
        return runs(clear).stream().filter(run -> clear.get(run.first()).from().isPresent()).map(run -> new ClearSector(run.first(),
                run.last(), clear.get(run.first()).from().getAsDouble(), clear.get(run.first()).to())).toList();
    }

    /** From which slope on a direction is clear, and up to which where that is not the steepest, decimal degrees. */
    private record Clear(OptionalDouble from, OptionalDouble to) {
    }

    /** Returns the sectors that are clear from no slope on, each with what stands against it. */
    public List<ClosedSector> closedSectors() {
        List<ClosedSector> found = new ArrayList<>();
        for (Run run : runs(directions.stream().map(LandingDirections::closedBy).toList())) {
            List<LandingCell> cells = IntStream.range(0, run.count()).mapToObj(i -> directions.get((run.first() + i) % COUNT))
                    .filter(direction -> direction.clearFromDeg().isEmpty()).map(LandingDirection::telling).toList();
            cells.stream().min(Comparator.comparingDouble(cell -> cell.marginM().orElse(Double.POSITIVE_INFINITY)))
                    .ifPresent(cell -> found.add(new ClosedSector(run.first(), run.last(), cell)));
        }
        return found;
    }

    /** Returns what closes a direction, empty where nothing does: directions beside one another that are closed by the same are one run. */
    private static List<Object> closedBy(LandingDirection direction) {
        LandingCell cell = direction.telling();
        return direction.clearFromDeg().isPresent() ? List.of()
                : List.of(cell.state(), cell.governing().filter(found -> cell.state() == LandingCell.State.BLOCKED)
                        .map(found -> (Object) found.label()).orElse(""));
    }

    /** Directions beside one another, the first and the last. */
    private record Run(int first, int count) {
        private int last() {
            return (first + count - 1) % COUNT;
        }
    }

    /** Returns the runs of directions that have the same value, the one that begins nearest after north first. */
    private static List<Run> runs(List<?> values) {
        int start = IntStream.range(0, COUNT).filter(i -> !values.get(i).equals(values.get(Math.floorMod(i - 1, COUNT)))).findFirst()
                .orElse(0);
        List<Run> runs = new ArrayList<>();
        for (int done = 0; done < COUNT;) {
            int first = (start + done) % COUNT;
            int count = 1;
            while (done + count < COUNT && values.get((first + count) % COUNT).equals(values.get(first))) {
                count++;
            }
            runs.add(new Run(first, count));
            done += count;
        }
        runs.sort(Comparator.comparingInt(Run::first));
        return runs;
    }

    /** Rounds the clear slopes of a direction inward to whole degrees, where such are left. */
    private Clear rounded(LandingDirection direction) {
        OptionalDouble from = direction.clearFromDeg();
        OptionalDouble to = direction.clearToDeg();
        if (from.isEmpty()) {
            return new Clear(from, to);
        }
        double up = Math.ceil(from.getAsDouble() - 1e-9);
        double down = Math.floor(to.orElse(slopes.degrees().get(slopes.degrees().size() - 1)) + 1e-9);
        if (down < up) {
            return to.isPresent() ? new Clear(from, to) : new Clear(OptionalDouble.of(Math.min(up, slopes.toDeg())), to);
        }
        return new Clear(OptionalDouble.of(up), to.isPresent() ? OptionalDouble.of(down) : to);
    }

    /** Returns the clear sectors in sentences, or that there is none; bearings less a variation, decimal degrees: zero for true ones. */
    public List<Message> sentences(double variationDeg) {
        List<Message> found = sectors().stream().map(sector -> sector.message(variationDeg)).toList();
        return found.isEmpty() ? List.of(Message.of("landing.none")) : found;
    }

    /** Returns the clear sector to which a direction has the least to be turned, the flattest of those; empty where there is none. */
    public Optional<ClearSector> nearestSector(double trueDeg) {
        return sectors().stream().min(Comparator.<ClearSector>comparingDouble(sector -> sector.turnDeg(trueDeg))
                .thenComparingDouble(ClearSector::clearFromDeg));
    }

    /** The work itself. */
    private static final class Search {
        private final AidEvaluation evaluation;
        private final double ownDeg;
        private final List<Double> slopes;
        private final SettableSlopes range;
        private final Surroundings surroundings;
        private final GoverningSearch search;
        private final TrialLayouts layouts;
        private final List<ObstacleSurvey> surveys;
        private final List<ApproachDirection> named;
        private final List<Message> uncompared;
        private final boolean padKnown;

        private Search(AidEvaluation evaluation, SettableSlopes slopes) {
            this.evaluation = evaluation;
            this.slopes = slopes.degrees();
            range = slopes;
            ownDeg = evaluation.frame().orThrow().bearingDeg();
            surroundings = evaluation.surroundings().orThrow();
            search = new GoverningSearch(surroundings);
            layouts = new TrialLayouts(evaluation);
            Aerodrome aerodrome = evaluation.project().getAerodrome();
            surveys = aerodrome == null ? List.of() : aerodrome.getObstacleSurveys().stream()
                    .filter(survey -> !SurveyDays.isLongAgo(survey.getDate(), evaluation.project())).toList();
            named = Projects.helipad(evaluation.host()).map(helipad -> List.copyOf(helipad.getDirections())).orElse(List.of());
            uncompared = Stream.concat(surroundings.uncompared().stream(), surroundings.withoutAccuracy().stream())
                    .map(found -> found.reason()).toList();
            padKnown = Projects.helipad(evaluation.host()).flatMap(PadArea::of).isPresent();
        }

        private LandingDirections run() {
            Aerodrome aerodrome = evaluation.project().getAerodrome();
            boolean levelled = (aerodrome == null || aerodrome.getGroundLevels().isEmpty())
                    && Projects.helipad(evaluation.host()).filter(pad -> PadArea.bearing(pad).isPresent()).isEmpty();
            List<Attempt<List<TrialLayouts.Held>>> everywhere = levelled ? layouts() : List.of();
            List<List<Attempt<List<TrialLayouts.Held>>>> each = new ArrayList<>();
            for (int bearing = 0; bearing < COUNT; bearing++) {
                layouts.turn(bearing);
                each.add(levelled ? everywhere : layouts());
            }
            List<LandingDirection> found = IntStream.range(0, COUNT).parallel()
                    .mapToObj(bearing -> direction(bearing, each.get(bearing))).toList();
            List<Message> notes = new ArrayList<>();
            notes.add(Message.of("landing.range", range.source(), Words.wholeDegrees(range.fromDeg()), Words.wholeDegrees(range.toDeg()),
                    Words.degrees(range.stepDeg())));
            notes.add(Message.of(layouts.isSighted() ? "landing.surface-and-sight" : "landing.surface-alone"));
            return new LandingDirections(found, range, layouts.isSighted(), notes);
        }

        private List<Attempt<List<TrialLayouts.Held>>> layouts() {
            return slopes.stream().map(layouts::at).toList();
        }

        private LandingDirection direction(int bearing, List<Attempt<List<TrialLayouts.Held>>> laid) {
            double turn = bearing - ownDeg;
            List<ProtectionSurface> surfaces = laid.stream().flatMap(attempt -> attempt.value().stream()).flatMap(List::stream)
                    .map(TrialLayouts.Held::surface).toList();
            GoverningSearch.Near near = surfaces.isEmpty() ? null : search.near(surfaces, turn);
            List<LandingCell> cells = new ArrayList<>(slopes.size());
            for (int i = 0; i < slopes.size(); i++) {
                Attempt<List<TrialLayouts.Held>> held = laid.get(i);
                cells.add(held.value().isPresent() ? cell(slopes.get(i), held.value().get(), near, bearing, turn)
                        : new LandingCell(slopes.get(i), LandingCell.State.NOT_EVALUATED, Optional.empty(), Optional.empty(),
                                held.reason()));
            }
            return new LandingDirection(bearing, cells);
        }

        private LandingCell cell(double slopeDeg, List<TrialLayouts.Held> held, GoverningSearch.Near near, int bearing, double turn) {
            Optional<Standing> worst = Optional.empty();
            Optional<LandingCell.Line> line = Optional.empty();
            Optional<Message> blocked = Optional.empty();
            for (TrialLayouts.Held against : held) {
                Optional<Standing> found = near.governing(against.surface().turnedAboutOrigin(turn), against.isSight(),
                        !against.mayBeShielded());
                if (found.isPresent() && (worst.isEmpty() || found.get().marginM() < worst.get().marginM())) {
                    worst = found;
                    line = Optional.of(against.line());
                }
                blocked = blocked.isPresent() ? blocked : against.reason();
            }
            if (worst.filter(found -> found.worst().excessM() > 0).isPresent()) {
                blocked = Optional.of(Message.of("landing.through", Words.name(worst.get().label()), Words.margin(-worst.get().marginM()),
                        line.get().message()));
            }
            Optional<PadArea.Where> onPad = held.stream().flatMap(against -> against.onPad().stream()).findFirst();
            if (blocked.isEmpty() && onPad.isPresent()) {
                boolean unknown = onPad.get() == PadArea.Where.UNKNOWN;
                return new LandingCell(slopeDeg, unknown ? LandingCell.State.NOT_EVALUATED : LandingCell.State.BLOCKED, Optional.of(
                        LandingCell.Line.PAD), Optional.empty(), Optional.of(Message.of(unknown ? "landing.fato-bearing"
                                : "landing.on-pad")));
            }
            Optional<Message> unknown = blocked.isPresent() ? Optional.empty() : unknown(held, bearing);
            LandingCell.State state = blocked.isPresent() ? LandingCell.State.BLOCKED
                    : unknown.isPresent() ? LandingCell.State.NOT_EVALUATED : LandingCell.State.CLEAR;
            return new LandingCell(slopeDeg, state, line, worst, blocked.isPresent() ? blocked : unknown);
        }

        /** Returns what is not known of a direction in which nothing is known to stand through. */
        private Optional<Message> unknown(List<TrialLayouts.Held> held, int bearing) {
            if (!padKnown) {
                return Optional.of(Message.of("landing.no-fato"));
            }
            if (!uncompared.isEmpty()) {
                return Optional.of(Message.of("landing.uncompared", Words.list(uncompared)));
            }
            if (layouts.isSighted() && surroundings.count() == 0) {
                return Optional.of(Message.of("portable.no-survey"));
            }
            for (TrialLayouts.Held against : held) {
                if (!SurveyReach.covers(surveys, named, against.surface(), bearing)) {
                    List<Message> lacking = SurveyReach.reaching(surveys, named, against.surface(), bearing).stream()
                            .flatMap(survey -> SurveyReach.lacking(survey).stream()).toList();
                    return Optional.of(lacking.isEmpty() ? Message.of("landing.no-survey")
                            : Message.of("landing.survey-lacking", Words.list(lacking)));
                }
            }
            return Optional.empty();
        }
    }
}
