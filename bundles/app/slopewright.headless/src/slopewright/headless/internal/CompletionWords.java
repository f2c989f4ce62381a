package slopewright.headless.internal;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

import slopewright.drawing.View;
import slopewright.drawing.pilot.Daylight;
import slopewright.drawing.sheet.SheetFormat;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.standards.RuleSets;

/** The words that an option takes, where they are few, for a shell to offer. */
final class CompletionWords {

    private final Map<String, List<String>> words = Map.ofEntries(
            Map.entry("--view", Arrays.stream(View.values()).map(View::key).toList()),
            Map.entry("--rule-set", RuleSets.all().stream().flatMap(rules -> Stream.of(rules.key(), rules.key() + ":"
                    + rules.edition())).distinct().toList()),
            Map.entry("--family", Families.all().stream().map(IndicatorFamily::key).toList()),
            Map.entry("--daylight", lower(Daylight.values())),
            Map.entry("--language", List.of("en", "de")),
            Map.entry("--units", List.of("metres", "feet")),
            Map.entry("--angles", List.of("minutes", "decimal")),
            Map.entry("--side", List.of("left", "right", "both")),
            Map.entry("--stage", List.of("design", "set-up", "operation")),
            Map.entry("--fail-on", List.of("note", "warning", "fail")),
            Map.entry("--sheet", List.of("setting-out", "circuits", "publish")),
            Map.entry("--heights", List.of("top", "ground", "above-ground")),
            Map.entry("--as", List.of("obstacles", "ground-levels", "obstacle-block")));

    private CompletionWords() {
    }

    private static List<String> lower(Enum<?>[] values) {
        return Arrays.stream(values).map(value -> value.name().toLowerCase(Locale.ROOT)).toList();
    }

    /** Gives the options and parameters of all commands their words; none of them is called afterwards. */
    static void give(CommandLine all) {
        CompletionWords known = new CompletionWords();
        all.getSubcommands().values().forEach(command -> known.give(command.getCommandSpec()));
    }

    private void give(CommandSpec spec) {
        for (OptionSpec option : List.copyOf(spec.options())) {
            of(spec, option).ifPresent(found -> {
                spec.remove(option);
                spec.addOption(OptionSpec.builder(option).completionCandidates(found).paramLabel(label(option)).build());
            });
        }
        for (PositionalParamSpec parameter : List.copyOf(spec.positionalParameters())) {
            entered(parameter).ifPresent(words -> {
                spec.remove(parameter);
                spec.addPositional(PositionalParamSpec.builder(parameter).completionCandidates(words).build());
            });
        }
    }

    /** The script keeps the words under the label, so no two options of a command may share one. */
    private static String label(OptionSpec option) {
        return option.longestName().replaceFirst("^-+", "").replace('-', '_').toUpperCase(Locale.ROOT);
    }

    private Optional<List<String>> of(CommandSpec spec, OptionSpec option) {
        if (spec.name().equals("draw") && option.longestName().equals("--paper")) {
            return Optional.of(Arrays.stream(SheetFormat.values()).map(SheetFormat::key).toList());
        }
        return Optional.ofNullable(words.get(option.longestName())).or(() -> entered(option));
    }

    /** Returns those that an enumeration or a list gives, as they are typed. */
    static Optional<List<String>> entered(ArgSpec argument) {
        return Optional.ofNullable(argument.completionCandidates()).map(words -> StreamSupport.stream(words.spliterator(), false)
                .map(word -> word.toLowerCase(Locale.ROOT)).toList());
    }
}
