package slopewright.checks;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * One case of one rule.
 *
 * @param rule     id of the rule
 * @param name     what is special about the case
 * @param expected the heaviest verdict of the rule; empty where it must say nothing
 * @param sample   makes the project
 */
record RuleCase(String rule, String name, Optional<Result> expected, Supplier<Sample> sample) {

    /** Makes a case of a base and one change. */
    static RuleCase of(String rule, Result expected, String name, Supplier<Sample> base, Consumer<Sample> change) {
        return new RuleCase(rule, name, Optional.ofNullable(expected), () -> {
            Sample sample = base.get();
            change.accept(sample);
            return sample;
        });
    }

    @Override
    public String toString() {
        return rule + " " + expected.map(Result::name).orElse("nothing") + ": " + name;
    }
}
