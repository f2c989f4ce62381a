package slopewright.evaluation.tolerance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachHost;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.standards.RuleSet;

/**
 * What a layout loses when its units are set, levelled or placed a little wrong: partial derivatives, the worst case, and random trials.
 * The margin is that of the evaluation, with the accuracy of the survey on the safe side.
 *
 * @param family        key of the family
 * @param ruleSet       key of the rule set
 * @param tolerances    the tolerances of the units
 * @param samples       number of random trials
 * @param seed          where the random numbers start
 * @param mix           the aeroplanes; empty where none were given
 * @param sensitivities one for each source of error and quantity that can be had
 * @param worst         one for each quantity that can be had
 * @param distributions one for each quantity that can be had; empty where no trials were asked for
 * @param uncompared    what is entered but could not be compared with the surface, so that the margin does not know it
 * @param notes         what a reader must know
 */
public record ToleranceStudy(String family, String ruleSet, Tolerances tolerances, int samples, long seed, List<Aeroplane> mix,
        List<Sensitivity> sensitivities, List<WorstCase> worst, List<Distribution> distributions, List<Uncompared> uncompared,
        List<Message> notes) {

    private static final int MOST_SAMPLES = 1_000_000;
    private static final double STEP_MINUTES = 0.01;
    private static final double STEP_M = 0.001;
    private static final int ROWS = 5;

    /** Copies the lists. */
    public ToleranceStudy {
        mix = List.copyOf(mix);
        sensitivities = List.copyOf(sensitivities);
        worst = List.copyOf(worst);
        distributions = List.copyOf(distributions);
        uncompared = List.copyOf(uncompared);
        notes = List.copyOf(notes);
    }

    /**
     * Studies an aid: as its units stand, or as it would be laid out where it has none.
     *
     * @param evaluation the evaluation of the aid
     * @param tolerances the tolerances of the units
     * @param samples    number of random trials, zero or more
     * @param seed       where the random numbers start; the same seed gives the same study
     * @return the study
     * @throws SitingException where there is no layout, or the number of trials is out of its range; the message says what
     */
    public static ToleranceStudy of(AidEvaluation evaluation, Tolerances tolerances, int samples, long seed) {
        return of(evaluation.request().orThrow(), evaluation.rules(), evaluation.layout().orThrow(), evaluation.surroundings().value(),
                mix(evaluation.host()), tolerances, samples, seed);
    }

    private static List<Aeroplane> mix(ApproachHost host) {
        List<AeroplaneGroup> groups = host.getRegularGroups().stream().filter(group -> group.getEyeToWheelM() != null).toList();
        boolean shared = groups.stream().allMatch(group -> group.getSharePercent() != null && group.getSharePercent() >= 0)
                && groups.stream().mapToDouble(AeroplaneGroup::getSharePercent).sum() > 0;
        return groups.stream().map(group -> new Aeroplane(Projects.label(group), group.getEyeToWheelM(),
                shared ? group.getSharePercent() : 100.0 / groups.size())).toList();
    }

    /** Studies a layout among its surroundings, where they are known. */
    static ToleranceStudy of(SitingRequest request, RuleSet rules, Siting siting, Optional<Surroundings> surroundings, List<Aeroplane> mix,
            Tolerances tolerances, int samples, long seed) {
        if (samples < 0 || samples > MOST_SAMPLES) {
            throw new SitingException(Message.of("tolerance.too-many-trials", Words.count(MOST_SAMPLES)));
        }
        PerturbedLayout bare = new PerturbedLayout(Families.get(siting.family()), request, rules, siting, List.of(), tolerances);
        List<ProtectionSurface> surfaces = Stream.of(0, -1, 1).flatMap(end -> bare.surfaceAtEnd(end).stream()).distinct().toList();
        PerturbedLayout layout = surroundings.map(around -> bare.with(StudiedShapes.of(around, surfaces))).orElse(bare);
        double[] nominal = layout.assess(new double[layout.sources().size()]);
        List<Sensitivity> sensitivities = new ArrayList<>();
        List<WorstCase> worst = new ArrayList<>();
        for (Quantity quantity : Quantity.values()) {
            if (Double.isFinite(nominal[quantity.ordinal()])) {
                List<Sensitivity> own = sensitivities(layout, quantity, nominal[quantity.ordinal()]);
                sensitivities.addAll(own);
                worst.add(worst(layout, surroundings, quantity, nominal[quantity.ordinal()], own));
            }
        }
        List<Distribution> distributions = samples == 0 ? List.of() : Sampling.run(layout, mix, samples, seed);
        List<Uncompared> uncompared = surroundings.map(around -> uncompared(around, surfaces)).orElse(List.of());
        List<Message> notes = notes(siting, surroundings.isPresent(), uncompared);
        if (samples > 0) {
            notes.add(Message.of(mix.isEmpty() ? "tolerance.trials" : "tolerance.trials-of-mix", Words.count(samples), Words.count(seed)));
        }
        return new ToleranceStudy(siting.family(), siting.ruleSet(), tolerances, samples, seed, mix, sensitivities, worst, distributions,
                uncompared, notes);
    }

    /** What could not be compared with one of the surfaces, each element once. */
    private static List<Uncompared> uncompared(Surroundings around, List<ProtectionSurface> surfaces) {
        Map<Object, Uncompared> found = new IdentityHashMap<>();
        List<Uncompared> left = new ArrayList<>();
        Stream.concat(around.uncompared().stream(), surfaces.stream().flatMap(surface -> around.compare(surface).uncompared().stream()))
                .filter(one -> found.put(one.element(), one) == null).forEach(left::add);
        return left;
    }

    private static List<Message> notes(Siting siting, boolean placed, List<Uncompared> uncompared) {
        List<Message> notes = new ArrayList<>();
        if (siting.surface().isEmpty()) {
            notes.add(Message.of("tolerance.no-surface", siting.noSurface().orElse(Message.of("siting.no-surface"))));
        } else if (!placed) {
            notes.add(Message.of("tolerance.no-frame"));
        }
        if (!uncompared.isEmpty()) {
            notes.add(Message.of("tolerance.uncompared", Words.list(uncompared.stream().map(Uncompared::reason).toList())));
        }
        notes.add(Message.of("tolerance.survey-on-the-safe-side"));
        notes.add(Message.of("tolerance.how-the-worst-is-found"));
        return notes;
    }

    private static List<Sensitivity> sensitivities(PerturbedLayout layout, Quantity quantity, double nominalM) {
        List<ErrorSource> sources = layout.sources();
        List<Sensitivity> found = new ArrayList<>();
        for (int i = 0; i < sources.size(); i++) {
            ErrorSource source = sources.get(i);
            double step = source.kind() == ErrorSource.Kind.ANGLE ? STEP_MINUTES : STEP_M;
            double slope = (value(layout, quantity, i, step) - value(layout, quantity, i, -step)) / (2 * step);
            found.add(new Sensitivity(source, quantity, finite(slope), finite(value(layout, quantity, i, source.least()) - nominalM),
                    finite(value(layout, quantity, i, source.greatest()) - nominalM)));
        }
        return found;
    }

    /** An obstacle that leaves the outline of the surface leaves no number; it then moves nothing. */
    private static double finite(double number) {
        return Double.isFinite(number) ? number : 0;
    }

    private static double value(PerturbedLayout layout, Quantity quantity, int source, double error) {
        double[] errors = new double[layout.sources().size()];
        errors[source] = error;
        return layout.assess(errors)[quantity.ordinal()];
    }

    /** The least margin is compared once more with everything that stands there, not only with what took part in the search. */
    private static WorstCase worst(PerturbedLayout layout, Optional<Surroundings> surroundings, Quantity quantity, double nominalM,
            List<Sensitivity> sensitivities) {
        double linear = sensitivities.stream().mapToDouble(Sensitivity::linearLossM).sum();
        WorstCaseSearch search = new WorstCaseSearch(layout);
        WorstCaseSearch.Extreme least = search.extreme(quantity, sensitivities, -1);
        double low = least.valueM();
        if (quantity == Quantity.SURFACE_MARGIN) {
            double all = surroundings.flatMap(around -> layout.surface(least.errors())
                    .map(surface -> around.compare(surface).marginM().orElse(Double.POSITIVE_INFINITY))).orElse(Double.POSITIVE_INFINITY);
            low = Math.min(low, all);
        }
        return new WorstCase(quantity, nominalM, linear, low, search.extreme(quantity, sensitivities, 1).valueM());
    }

    /** Returns the worst case of a quantity, empty where it cannot be had. */
    public Optional<WorstCase> worst(Quantity quantity) {
        return worst.stream().filter(found -> found.quantity() == quantity).findFirst();
    }

    /** Returns the random trials of a quantity, empty where there are none. */
    public Optional<Distribution> distribution(Quantity quantity) {
        return distributions.stream().filter(found -> found.quantity() == quantity).findFirst();
    }

    /** Returns the sources of error that move a quantity most, the greatest effect first. */
    public List<Sensitivity> strongest(Quantity quantity, int most) {
        return sensitivities.stream().filter(found -> found.quantity() == quantity && found.effectM() > 0)
                .sorted(Comparator.comparingDouble(Sensitivity::effectM).reversed()).limit(most).toList();
    }

    /** Returns what can go wrong by how much, a line each. */
    public List<Message> rows() {
        List<Message> rows = new ArrayList<>();
        for (WorstCase found : worst) {
            rows.add(Message.of("tolerance.row", found.quantity().message(), Words.m(found.nominalM()), Words.m(found.lowM()),
                    Words.m(found.highM()), Words.m(found.linearM())));
            boolean drawn = found.quantity() == Quantity.WHEEL_CLEARANCE && !mix.isEmpty();
            distribution(found.quantity()).ifPresent(trials -> rows.add(Message.of(drawn ? "tolerance.row-trials-of-mix"
                    : "tolerance.row-trials", Words.count(trials.samples()), Words.m(trials.meanM()), Words.m(trials.percentileM(1)),
                    Words.m(trials.percentileM(5)), Words.m(trials.percentileM(95)))));
            strongest(found.quantity(), ROWS).forEach(effect -> rows.add(Message.of("tolerance.row-source", effect.source().message(),
                    effect.source().amount(), Words.m(effect.lossM()), Words.m(effect.gainM()))));
        }
        return rows;
    }
}
