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
import slopewright.standards.Source;

/**
 * From how far an indicator is seen, by Allard's law, and from how far its units are told apart. An estimate: it knows one intensity on
 * the axis, one visibility and one threshold of the eye for each light, and no glare, rain on the windscreen or lights beside it.
 *
 * @param family         key of the family
 * @param intensityCd    intensity of one unit, candela; empty where none is known
 * @param visibilityM    meteorological optical range, metres
 * @param extinctionPerM extinction coefficient, 1/m
 * @param seen           the range under each light; empty where no intensity is known
 * @param separation     the pair of units that is hardest to tell apart; empty where there is none
 * @param notes          what a reader must know
 * @param citations      where every number that was used comes from
 */
public record RangeEstimate(String family, OptionalDouble intensityCd, double visibilityM, double extinctionPerM, List<SeenRange> seen,
        Optional<Separation> separation, List<Message> notes, List<Siting.CitedUse> citations) {

    /**
     * How far the light is seen under one light.
     *
     * @param condition   by day, at twilight or at night
     * @param thresholdLx illuminance that the eye needs, lux
     * @param solution    the range and how it was found
     */
    public record SeenRange(LightCondition condition, double thresholdLx, Allard.Solution solution) {
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
        OptionalDouble intensity = intensity(siting, rules, conditions, used, notes);
        double visibility = conditions.visibilityM().orElseGet(() -> {
            double assumed = use(rules.value("range.visibility-m"), used);
            notes.add(Message.of("range-estimate.visibility-taken", Words.wholeM(assumed)));
            return assumed;
        });
        double extinction = Allard.extinctionPerM(visibility, use(rules.value("range.contrast-threshold-percent"), used));
        List<SeenRange> seen = new ArrayList<>();
        if (intensity.isPresent()) {
            for (LightCondition condition : LightCondition.values()) {
                double threshold = use(rules.value("range.eye-illuminance-" + condition.key() + "-lx"), used);
                seen.add(new SeenRange(condition, threshold, Allard.range(intensity.getAsDouble(), extinction, threshold)));
            }
        }
        Optional<Separation> separation = Separation.of(siting.units(), siting.slopeDeg(), use(rules.value("range.resolution-min"), used),
                use(rules.value("range.clear-separation-min"), used));
        return new RangeEstimate(siting.family(), intensity, visibility, extinction, seen, separation, notes, used);
    }

    private static OptionalDouble intensity(Siting siting, RuleSet rules, RangeConditions conditions, List<Siting.CitedUse> used,
            List<Message> notes) {
        Optional<CitedValue> remembered = rules.find(siting.family() + ".intensity-cd");
        IndicatorFamily family = Families.get(siting.family());
        if (family.displayForm() == IndicatorFamily.DisplayForm.PANELS) {
            notes.add(Message.of("range-estimate.panels"));
            return OptionalDouble.empty();
        }
        if (conditions.intensityCd().isPresent()) {
            double entered = conditions.intensityCd().getAsDouble();
            used.add(new Siting.CitedUse("intensity-cd", entered, "cd", new Citation("intensity-cd",
                    new Source("project", "equipment entered in the project", ""), "", Provenance.OVERRIDE, "", "")));
            return OptionalDouble.of(entered);
        }
        if (remembered.isEmpty()) {
            notes.add(Message.of("range-estimate.no-intensity", Words.name(family.name())));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(use(remembered.get(), used));
    }

    private static double use(CitedValue value, List<Siting.CitedUse> used) {
        used.add(new Siting.CitedUse(value.key(), value.value(), value.unit(), value.citation()));
        return value.value();
    }

    /** Returns how far it is seen under a light, metres; empty where no intensity is known. */
    public OptionalDouble rangeM(LightCondition condition) {
        return seen.stream().filter(one -> one.condition() == condition).mapToDouble(one -> one.solution().rangeM()).findFirst();
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
