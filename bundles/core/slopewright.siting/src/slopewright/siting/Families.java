package slopewright.siting;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.function.Function;
import java.util.stream.Collectors;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Words;
import slopewright.standards.RuleSet;

/** The families that are there, found as services of this bundle. */
public final class Families {

    private static final List<IndicatorFamily> ALL = ServiceLoader.load(IndicatorFamily.class, Families.class.getClassLoader()).stream()
            .map(ServiceLoader.Provider::get).toList();
    private static final Map<String, IndicatorFamily> BY_KEY = ALL.stream()
            .collect(Collectors.toUnmodifiableMap(IndicatorFamily::key, Function.identity()));

    private Families() {
    }

    /** Returns all families in the order in which they are offered. */
    public static List<IndicatorFamily> all() {
        return ALL;
    }

    /** Returns a family, empty where the key is unknown. */
    public static Optional<IndicatorFamily> find(String key) {
        return Optional.ofNullable(BY_KEY.get(key));
    }

    /** Returns the trade name of a family, in the language of the reader where it has a name in the catalogues. */
    public static Argument name(IndicatorFamily family) {
        String term = "family." + family.key();
        return MessageRenderer.of(Locale.ENGLISH).keys().contains("term." + term) ? Words.term(term) : Words.name(family.name());
    }

    /** Returns the trade name of a family, or the key where no family has it. */
    public static Argument nameOf(String key) {
        return find(key).map(Families::name).orElseGet(() -> Words.name(key));
    }

    /**
     * Returns a family that must be there.
     *
     * @throws SitingException where the key is unknown; the message lists the known ones by their trade names
     */
    public static IndicatorFamily get(String key) {
        return find(key).orElseThrow(() -> new SitingException(Message.of("siting.refused.unknown-family", Words.name(key),
                Words.list(ALL.stream().map(Families::name).toList()))));
    }

    /**
     * Lays out an indicator of a family under a rule set.
     *
     * @throws SitingException where the rule set does not cover the family, an input is missing or no layout fits
     */
    public static Siting site(String family, SitingRequest request, RuleSet rules) {
        return site(get(family), request, rules);
    }

    /**
     * Lays out an indicator of a family under a rule set.
     *
     * @throws SitingException where the rule set does not cover the family, an input is missing or no layout fits
     */
    public static Siting site(IndicatorFamily family, SitingRequest request, RuleSet rules) {
        if (!rules.covers(family.ruleKey())) {
            throw notCovered(family, rules);
        }
        InputLimits.check(family, request);
        try {
            return family.site(request, rules);
        } catch (IllegalArgumentException e) {
            throw new SitingException(Message.of("siting.refused.no-units", name(family)));
        }
    }

    /** Makes the refusal of a family that a rule set does not cover. */
    public static SitingException notCovered(IndicatorFamily family, RuleSet rules) {
        return new SitingException(Message.of("siting.refused.not-covered", rules.descriptor().name(), Words.name(rules.edition()),
                name(family), Words.list(rules.descriptor().families().stream().map(Families::nameOf).toList())));
    }
}
