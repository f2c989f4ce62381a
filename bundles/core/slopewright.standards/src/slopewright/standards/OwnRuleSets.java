package slopewright.standards;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import slopewright.standards.internal.OwnRuleSetFolder;

/**
 * Rule sets of an organisation: a folder in the format of the shipped ones that holds only what differs, laid over one of them. All that
 * it holds is of class {@link Provenance#ORGANISATION}, whatever the files claim.
 */
public final class OwnRuleSets {
    private OwnRuleSets() {
    }

    /**
     * Reads a folder.
     *
     * @param folder the folder, with {@code rule-set.properties} and {@code values.csv}, and tables where they differ
     * @return the rule set
     * @throws StandardsException where a file is missing or wrong; the message names file, line and reason
     */
    public static RuleSet read(Path folder) {
        return OwnRuleSetFolder.read(folder);
    }

    /**
     * Returns the files of a commented starting point.
     *
     * @param over the rule set over which it is laid
     * @return text by file name
     */
    public static Map<String, String> template(RuleSet over) {
        return OwnRuleSetFolder.template(over);
    }

    /**
     * One value that differs between two rule sets.
     *
     * @param key   its key
     * @param first the value in the first, empty where that gives none
     * @param other the value in the other, empty where that gives none
     */
    public record Difference(String key, Optional<CitedValue> first, Optional<CitedValue> other) {
    }

    /**
     * Lists the values in which two rule sets differ, in number or in how well they are known; a choice counts by the place of its word.
     *
     * @param first one rule set
     * @param other the other
     * @return the differences in the order of their keys
     */
    public static List<Difference> compare(RuleSet first, RuleSet other) {
        Map<String, CitedValue> left = byKey(first);
        Map<String, CitedValue> right = byKey(other);
        List<Difference> found = new ArrayList<>();
        Map<String, CitedValue> all = new TreeMap<>(left);
        all.putAll(right);
        for (String key : all.keySet()) {
            Optional<CitedValue> mine = Optional.ofNullable(left.get(key));
            Optional<CitedValue> theirs = Optional.ofNullable(right.get(key));
            boolean same = mine.isPresent() && theirs.isPresent() && mine.get().value() == theirs.get().value()
                    && mine.get().unit().equals(theirs.get().unit())
                    && mine.get().citation().provenance() == theirs.get().citation().provenance();
            if (!same) {
                found.add(new Difference(key, mine, theirs));
            }
        }
        return found;
    }

    private static Map<String, CitedValue> byKey(RuleSet rules) {
        Map<String, CitedValue> values = new TreeMap<>();
        rules.values().forEach(value -> values.put(value.key(), value));
        rules.choices().forEach(choice -> values.put(choice.key(), new CitedValue(choice.word().place(), choice.word().kind().unit(),
                choice.citation())));
        return values;
    }
}
