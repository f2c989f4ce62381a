package slopewright.evaluation.tolerance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachHost;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.RuleSet;

/**
 * What a layout loses when its units are set, levelled or placed a little wrong and its obstacles were surveyed only so well: partial
 * derivatives, the worst case, and random trials.
 *
 * @param family        key of the family
 * @param ruleSet       key of the rule set
 * @param tolerances    the tolerances of the units
 * @param samples       number of random trials
 * @param seed          where the random numbers start
 * @param mix           the aeroplanes; empty where none were given
 * @param sensitivities one for each cause and quantity that can be had
 * @param worst         one for each quantity that can be had
 * @param chances       one for each quantity that can be had; empty where no trials were asked for
 * @param notes         what a reader must know
 */
public record ToleranceStudy(String family, String ruleSet, Tolerances tolerances, int samples, long seed, List<Aeroplane> mix,
        List<Sensitivity> sensitivities, List<WorstCase> worst, List<Distribution> chances, List<String> notes) {

    /** Most obstacles that take part; those with the least margin do. */
    private static final int MOST_OBSTACLES = 40;
    private static final int MOST_SAMPLES = 1_000_000;
    private static final double STEP_MINUTES = 0.01;
    private static final double STEP_M = 0.001;
    private static final int ROWS = 5;

    /** Copies the lists. */
    public ToleranceStudy {
        mix = List.copyOf(mix);
        sensitivities = List.copyOf(sensitivities);
        worst = List.copyOf(worst);
        chances = List.copyOf(chances);
        notes = List.copyOf(notes);
    }

    /**
     * Studies an aid: as its units stand, or as it would be solved where it has none.
     *
     * @param evaluation the evaluation of the aid
     * @param tolerances the tolerances of the units
     * @param samples    number of random trials, zero or more
     * @param seed       where the random numbers start; the same seed gives the same study
     * @return the study
     * @throws SitingException where something is missing; the message says what
     */
    public static ToleranceStudy of(AidEvaluation evaluation, Tolerances tolerances, int samples, long seed) {
        SitingRequest request = evaluation.request().orThrow();
        Siting siting = evaluation.layout().orThrow();
        Project project = evaluation.project();
        List<Obstacle> obstacles = project.getAerodrome() == null ? List.of() : project.getAerodrome().getObstacles();
        return of(request, evaluation.rules(), siting, obstacles, obstacles.isEmpty() ? Optional.empty()
                : Optional.of(evaluation.frame().orThrow()), mix(evaluation.host()), tolerances, samples, seed);
    }

    private static List<Aeroplane> mix(ApproachHost host) {
        List<AeroplaneGroup> groups = host.getRegularGroups().stream().filter(group -> group.getEyeToWheelM() != null).toList();
        boolean shared = groups.stream().allMatch(group -> group.getSharePercent() != null && group.getSharePercent() >= 0)
                && groups.stream().mapToDouble(AeroplaneGroup::getSharePercent).sum() > 0;
        return groups.stream().map(group -> new Aeroplane(Projects.label(group), group.getEyeToWheelM(),
                shared ? group.getSharePercent() : 100.0 / groups.size())).toList();
    }

    /**
     * Studies a layout.
     *
     * @param request    what the layout was meant to start from
     * @param rules      the rule set
     * @param siting     the layout
     * @param obstacles  the obstacles
     * @param frame      the frame of the layout; may be empty where there are no obstacles
     * @param mix        the aeroplanes; may be empty
     * @param tolerances the tolerances of the units
     * @param samples    number of random trials, zero or more
     * @param seed       where the random numbers start
     * @return the study
     * @throws SitingException where an obstacle lacks a number, or the number of trials is out of its range
     */
    public static ToleranceStudy of(SitingRequest request, RuleSet rules, Siting siting, List<Obstacle> obstacles,
            Optional<SiteFrame> frame,
            List<Aeroplane> mix, Tolerances tolerances, int samples, long seed) {
        if (samples < 0 || samples > MOST_SAMPLES) {
            throw new SitingException("the number of trials must be 0 to " + MOST_SAMPLES);
        }
        List<String> notes = new ArrayList<>();
        IndicatorFamily family = Families.get(siting.family());
        List<PerturbedLayout.Shape> shapes = frame.isEmpty() ? List.of() : shapes(siting, obstacles, frame.get(), notes);
        PerturbedLayout layout = new PerturbedLayout(family, request, rules, siting, shapes, tolerances);
        double[] nominal = layout.assess(new double[layout.causes().size()]);
        List<Sensitivity> sensitivities = new ArrayList<>();
        List<WorstCase> worst = new ArrayList<>();
        for (Quantity quantity : Quantity.values()) {
            if (Double.isFinite(nominal[quantity.ordinal()])) {
                List<Sensitivity> own = sensitivities(layout, quantity, nominal[quantity.ordinal()]);
                sensitivities.addAll(own);
                worst.add(worst(layout, quantity, nominal[quantity.ordinal()], own));
            }
        }
        List<Distribution> chances = samples == 0 ? List.of() : Sampling.run(layout, mix, samples, seed);
        notes.add("Surveyed tops and places are moved within their accuracy here; the margin as planned counts them as surveyed, while a"
                + " check counts the accuracy on the safe side.");
        notes.add("The worst case turns every cause to an end of its tolerance and goes on turning single ones until none makes it worse.");
        if (samples > 0) {
            notes.add(String.format(Locale.ROOT,
                    "%d random trials, seed %d: every cause uniform over its tolerance and independent of the others%s.",
                    samples, seed, mix.isEmpty() ? "" : "; the aeroplane drawn by its share"));
        }
        return new ToleranceStudy(siting.family(), siting.ruleSet(), tolerances, samples, seed, mix, sensitivities, worst, chances, notes);
    }

    private static List<PerturbedLayout.Shape> shapes(Siting siting, List<Obstacle> obstacles, SiteFrame frame, List<String> notes) {
        if (siting.surface().isEmpty()) {
            notes.add("There is no obstacle surface; its margin is not studied.");
            return List.of();
        }
        ProtectionSurface surface = siting.surface().get().geometry();
        record Ranked(PerturbedLayout.Shape shape, double marginM) {
        }
        List<Ranked> ranked = new ArrayList<>();
        for (Obstacle obstacle : obstacles) {
            PerturbedLayout.Shape shape = new PerturbedLayout.Shape("obstacle " + Projects.label(obstacle), obstacle.getKind(),
                    SurveyedShape.of(obstacle, frame).points(), orZero(obstacle.getHorizontalAccuracyM()),
                            orZero(obstacle.getVerticalAccuracyM()));
            shape.compare(surface, 0, 0).ifPresent(hit -> ranked.add(new Ranked(shape, -hit.excessM())));
        }
        ranked.sort(Comparator.comparingDouble(Ranked::marginM));
        if (ranked.size() > MOST_OBSTACLES) {
            notes.add("Of " + ranked.size() + " obstacles under the surface the " + MOST_OBSTACLES + " with the least margin take part.");
        }
        return ranked.stream().limit(MOST_OBSTACLES).map(Ranked::shape).toList();
    }

    private static double orZero(Double number) {
        return number == null ? 0 : number;
    }

    private static List<Sensitivity> sensitivities(PerturbedLayout layout, Quantity quantity, double nominalM) {
        List<ErrorSource> causes = layout.causes();
        List<Sensitivity> found = new ArrayList<>();
        for (int i = 0; i < causes.size(); i++) {
            ErrorSource cause = causes.get(i);
            double step = cause.kind() == ErrorSource.Kind.ANGLE ? STEP_MINUTES : STEP_M;
            double slope = (value(layout, quantity, i, step) - value(layout, quantity, i, -step)) / (2 * step);
            found.add(new Sensitivity(cause, quantity, finite(slope), finite(value(layout, quantity, i, -cause.tolerance()) - nominalM),
                    finite(value(layout, quantity, i, cause.tolerance()) - nominalM)));
        }
        return found;
    }

    /** An obstacle that leaves the outline of the surface leaves no number; it then moves nothing. */
    private static double finite(double number) {
        return Double.isFinite(number) ? number : 0;
    }

    private static double value(PerturbedLayout layout, Quantity quantity, int cause, double error) {
        double[] errors = new double[layout.causes().size()];
        errors[cause] = error;
        return layout.assess(errors)[quantity.ordinal()];
    }

    private static WorstCase worst(PerturbedLayout layout, Quantity quantity, double nominalM, List<Sensitivity> sensitivities) {
        double linear = sensitivities.stream().mapToDouble(one -> Math.abs(one.perUnit()) * one.cause().tolerance()).sum();
        WorstCaseSearch corners = new WorstCaseSearch(layout);
        return new WorstCase(quantity, nominalM, linear, corners.extremeM(quantity, sensitivities, -1),
                corners.extremeM(quantity, sensitivities, 1));
    }

    /** Returns the worst case of a quantity, empty where it can not be had. */
    public Optional<WorstCase> worst(Quantity quantity) {
        return worst.stream().filter(one -> one.quantity() == quantity).findFirst();
    }

    /** Returns the random trials of a quantity, empty where there are none. */
    public Optional<Distribution> chance(Quantity quantity) {
        return chances.stream().filter(one -> one.quantity() == quantity).findFirst();
    }

    /** Returns the causes that move a quantity most, the greatest effect first. */
    public List<Sensitivity> strongest(Quantity quantity, int most) {
        return sensitivities.stream().filter(one -> one.quantity() == quantity && one.effectM() > 0)
                .sorted(Comparator.comparingDouble(Sensitivity::effectM).reversed()).limit(most).toList();
    }

    /** Returns what can go wrong by how much, a line each, for people. */
    public List<String> rows() {
        List<String> rows = new ArrayList<>();
        for (WorstCase one : worst) {
            rows.add(String.format(Locale.ROOT, "The %s is %.2f m as planned, and between %.2f and %.2f m at worst (linear sum %.2f m).",
                    one.quantity().label(), one.nominalM(), one.lowM(), one.highM(), one.linearM()));
            chance(one.quantity()).ifPresent(chance -> rows.add(String.format(Locale.ROOT,
                    "  Over %d trials: mean %.2f m, 1 %% under %.2f m, 5 %% under %.2f m, 95 %% under %.2f m.%s", chance.samples(),
                            chance.meanM(),
                    chance.percentileM(1), chance.percentileM(5), chance.percentileM(95),
                    one.quantity() == Quantity.WHEEL_CLEARANCE && !mix.isEmpty() ? " Aeroplanes drawn by their share." : "")));
            for (Sensitivity cause : strongest(one.quantity(), ROWS)) {
                rows.add(String.format(Locale.ROOT, "  The %s wrong by %s moves it by %+.2f or %+.2f m.", cause.cause().label(),
                        cause.cause().amount(), cause.lowM(), cause.highM()));
            }
        }
        return rows;
    }
}
