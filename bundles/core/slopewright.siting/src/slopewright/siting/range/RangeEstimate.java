package slopewright.siting.range;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Siting;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;
import slopewright.standards.Provenance;
import slopewright.standards.RuleSet;

/**
 * From how far an indicator is seen, by Allard's law, and from how far its units are told apart. An estimate: it knows the intensity toward
 * an eye on the slope over the extended centre line, one visibility and one threshold of the eye for each light, and no glare, rain on the
 * windscreen or lights beside it.
 *
 * @param family         key of the family
 * @param visibilityM    meteorological optical range, metres
 * @param extinctionPerM extinction coefficient, 1/m
 * @param seen           the range under each light; empty where no intensity is known
 * @param separation     the pair of units that is hardest to tell apart; empty where there is none
 * @param notes          what a reader must know
 * @param citations      where every number that was used comes from
 */
public record RangeEstimate(String family, double visibilityM, double extinctionPerM, List<SeenRange> seen,
        Optional<Separation> separation, List<Message> notes, List<Siting.CitedUse> citations) {
    private static final double FAR_M = 1e6;

    /**
     * How far the light is seen under one light.
     *
     * @param condition   by day, at twilight or at night
     * @param intensityCd intensity of the weakest unit toward the eye at that range, candela
     * @param thresholdLx illuminance that the eye needs, lux
     * @param solution    the range and how it was found
     */
    public record SeenRange(LightCondition condition, double intensityCd, double thresholdLx, Allard.Solution solution) {
    }

    /** Copies the lists. */
    public RangeEstimate {
        seen = List.copyOf(seen);
        notes = List.copyOf(notes);
        citations = List.copyOf(citations);
    }

    /**
     * Estimates the range of a layout.
     *
     * @param siting     the layout
     * @param rules      a rule set with the keys {@code range.…}
     * @param conditions intensity and visibility where they are known
     * @return the estimate
     * @throws IllegalArgumentException where the rule set lacks a value, or a number is out of its range
     */
    public static RangeEstimate of(Siting siting, RuleSet rules, RangeConditions conditions) {
        List<Siting.CitedUse> used = new ArrayList<>();
        List<Message> notes = new ArrayList<>();
        double visibility = conditions.visibilityM().orElseGet(() -> {
            double assumed = use(rules.value("range.visibility-m"), used);
            notes.add(Message.of("range-estimate.visibility-taken", Words.wholeM(assumed)));
            return assumed;
        });
        double extinction = Allard.extinctionPerM(visibility, use(rules.value("range.contrast-threshold-percent"), used));
        List<SeenRange> seen = seen(siting, rules, conditions, extinction, used, notes);
        Optional<Separation> separation = Separation.of(siting.units(), siting.slopeDeg(), use(rules.value("range.resolution-min"), used),
                use(rules.value("range.clear-separation-min"), used));
        return new RangeEstimate(siting.family(), visibility, extinction, seen, separation, notes, used);
    }

    private static List<SeenRange> seen(Siting siting, RuleSet rules, RangeConditions conditions, double extinction,
            List<Siting.CitedUse> used, List<Message> notes) {
        IndicatorFamily family = Families.get(siting.family());
        if (family.displayForm() == IndicatorFamily.DisplayForm.PANELS) {
            notes.add(Message.of("range-estimate.panels"));
            return List.of();
        }
        LightOutput output = LightOutput.of(family, rules, conditions);
        List<SeenRange> seen = new ArrayList<>();
        for (LightCondition condition : LightCondition.values()) {
            CitedValue threshold = EyeThreshold.of(rules, condition).strictest();
            LightOutput.Output there = converge(output, siting, condition, threshold.value(), extinction);
            if (there.intensityCd().isEmpty()) {
                there.reason().filter(reason -> !notes.contains(reason)).ifPresent(notes::add);
                continue;
            }
            use(threshold, used);
            there.uses().stream().filter(use -> !used.contains(use)).forEach(used::add);
            double intensity = there.intensityCd().getAsDouble();
            seen.add(new SeenRange(condition, intensity, threshold.value(), Allard.range(intensity, extinction, threshold.value())));
        }
        return seen;
    }

    /** The nearer the eye, the farther the units are off their axes: the intensity falls in steps until the range agrees with it. */
    private static LightOutput.Output converge(LightOutput output, Siting siting, LightCondition condition, double thresholdLx,
            double extinction) {
        LightOutput.Output now = output.weakestOnSlope(siting, FAR_M, condition);
        while (now.intensityCd().isPresent()) {
            double intensity = now.intensityCd().getAsDouble();
            LightOutput.Output there = output.weakestOnSlope(siting, Allard.range(intensity, extinction, thresholdLx).rangeM(), condition);
            if (there.intensityCd().isPresent() && there.intensityCd().getAsDouble() >= intensity) {
                return now;
            }
            now = there;
        }
        return now;
    }

    private static double use(CitedValue value, List<Siting.CitedUse> used) {
        used.add(new Siting.CitedUse(value.key(), value.value(), value.unit(), value.citation()));
        return value.value();
    }

    /** Returns how far it is seen under a light, metres; empty where no intensity is known. */
    public OptionalDouble rangeM(LightCondition condition) {
        return seen.stream().filter(range -> range.condition() == condition).mapToDouble(range -> range.solution().rangeM()).findFirst();
    }

    /** Returns the intensity of the weakest unit toward the eye under a light, candela; empty where none is known. */
    public OptionalDouble intensityCd(LightCondition condition) {
        return seen.stream().filter(range -> range.condition() == condition).mapToDouble(SeenRange::intensityCd).findFirst();
    }

    /** Returns how far it is seen by day, metres; empty where no intensity is known. */
    public OptionalDouble byDayM() {
        return rangeM(LightCondition.DAY);
    }

    /** Returns how far it is seen at twilight, metres; empty where no intensity is known. */
    public OptionalDouble atTwilightM() {
        return rangeM(LightCondition.TWILIGHT);
    }

    /** Returns how far it is seen at night, metres; empty where no intensity is known. */
    public OptionalDouble atNightM() {
        return rangeM(LightCondition.NIGHT);
    }

    /** Returns how far the pattern is read: seen, and its units clearly apart; metres, empty where no intensity is known. */
    public OptionalDouble readableM(LightCondition condition) {
        OptionalDouble range = rangeM(condition);
        return range.isEmpty() || separation.isEmpty() ? range
                : OptionalDouble.of(Math.min(range.getAsDouble(), separation.get().clearRangeM()));
    }

    /** Returns what ends the range of reading under a light, for people. */
    public String governing(LightCondition condition) {
        OptionalDouble range = rangeM(condition);
        if (range.isEmpty()) {
            return "no intensity is known";
        }
        boolean apart = separation.isPresent() && separation.get().clearRangeM() < range.getAsDouble();
        return apart ? "beyond " + metres(separation.get().clearRangeM()) + " the units are not clearly apart"
                : "beyond " + metres(range.getAsDouble()) + " the light is too weak for the eye";
    }

    private static String metres(double value) {
        return String.format(Locale.ROOT, "%.0f m", value);
    }

    /** Returns how well the weakest number is known. */
    public Provenance provenance() {
        return Provenance.derivedFrom(citations.stream().map(use -> use.citation().provenance()));
    }

    /** Returns the citations that still need a person's confirmation. */
    public List<Citation> toConfirm() {
        return citations.stream().map(Siting.CitedUse::citation).filter(Citation::toConfirm).distinct().toList();
    }
}
