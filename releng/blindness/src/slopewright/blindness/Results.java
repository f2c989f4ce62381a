package slopewright.blindness;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.checks.RuleCatalogue;
import slopewright.checks.Verdict;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.KeptForTheRecord;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.exchange.circuit.LoadSchedule;
import slopewright.exchange.map.GeoJsonFile;
import slopewright.exchange.map.MapExport;
import slopewright.exchange.publish.PublishedData;
import slopewright.exchange.settingout.SettingOutSchedule;
import slopewright.exchange.sheet.Sheet;
import slopewright.exchange.sheet.SheetFile;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;

/** Everything that a project gives: outcomes, the figures of its aids, and what is exported. */
final class Results {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
    private static final MessageRenderer ENGLISH = MessageRenderer.of(Locale.ENGLISH);
    private static final Set<String> READ_BACK = Set.of("REC-03", "REC-04");

    private final ProjectEvaluation evaluation;
    private final List<Outcome> outcomes;

    private Results(ProjectEvaluation evaluation, List<Outcome> outcomes) {
        this.evaluation = evaluation;
        this.outcomes = outcomes;
    }

    /**
     * Checks a project as it would be read from its file.
     *
     * @throws IllegalArgumentException where the file would be refused: an element that is referred to is not there, a rule set is unknown
     */
    static Results of(Project project) {
        EcoreUtil.CrossReferencer.find(List.of(project)).keySet().stream()
                .filter(target -> !EcoreUtil.isAncestor(project, target)).findFirst().ifPresent(target -> {
                    throw new IllegalArgumentException("refers to " + target);
                });
        ProjectEvaluation evaluation = ProjectEvaluation.of(project, Optional.empty());
        return new Results(evaluation, Checks.run(evaluation, rule -> true).outcomes());
    }

    List<Outcome> outcomes() {
        return outcomes;
    }

    /** Returns what is not met or to clear up by any rule but those about read-backs. */
    List<Outcome> open() {
        return outcomes.stream().filter(outcome -> isOpen(outcome) && !READ_BACK.contains(outcome.rule())).toList();
    }

    /** Returns what is not met or to clear up because entries are not as they were read back. */
    List<Outcome> notReadBack() {
        return outcomes.stream().filter(outcome -> isOpen(outcome) && READ_BACK.contains(outcome.rule())).toList();
    }

    private static boolean isOpen(Outcome outcome) {
        return outcome.verdict() == Verdict.NOT_MET || outcome.verdict() == Verdict.TO_CLEAR_UP;
    }

    /** Returns the outcomes by rule, element and number of their kind, without what things are called. */
    TreeMap<String, String> figures(Predicate<Outcome> wanted) {
        TreeMap<String, String> figures = new TreeMap<>();
        for (Outcome outcome : outcomes) {
            if (wanted.test(outcome) && !READ_BACK.contains(outcome.rule())) {
                String key = outcome.rule() + " " + outcome.elementId();
                String free = Stream.iterate(0, number -> number + 1).map(number -> key + " " + number)
                        .filter(name -> !figures.containsKey(name)).findFirst().orElseThrow();
                figures.put(free, outcome.verdict() + " " + outcome.measure() + " " + numbers(outcome.message())
                        + outcome.steps().stream().map(Results::numbers).toList());
            }
        }
        return figures;
    }

    /** Returns what the aids give. Held to be equal only where every number is. */
    List<String> aids() {
        return evaluation.aids().stream().map(Results::of).map(text -> text.replaceAll("confirmation=[^\\]]*", "")).toList();
    }

    private static String of(AidEvaluation aid) {
        return String.join("\n", aid.siting().toString(), aid.solved().toString(), aid.frame().toString(),
                aid.governing().map(found -> found.worst().toString()).toString(), aid.marginM().toString(),
                aid.obstacles().value().map(found -> found.inside().stream().map(inside -> inside.worst().toString()).toList()).toString(),
                aid.wheelClearances().stream().map(found -> found.group().getId() + found.clearanceM()).toList().toString());
    }

    /** Returns the ids of the elements that the report lists as those on which no result rests. */
    Set<String> away() {
        return KeptForTheRecord.elements(evaluation).stream().map(Identified::getId).collect(Collectors.toSet());
    }

    /** Returns the entries that the report lists as those on which no result rests, each as id and feature joined by a blank. */
    Set<String> kept() {
        Set<String> kept = new HashSet<>();
        for (Identified element : Ids.elements(evaluation.project())) {
            element.eClass().getEAllAttributes().stream().filter(attribute -> KeptForTheRecord.contains(evaluation, element, attribute))
                    .forEach(attribute -> kept.add(element.getId() + " " + attribute.getEContainingClass().getName() + "."
                            + attribute.getName()));
        }
        return kept;
    }

    /** Returns what is handed over, as it is written. */
    List<String> exports() {
        List<String> texts = new ArrayList<>();
        texts.add(new String(GeoJsonFile.bytes(MapExport.of(evaluation, evaluation.aids(), MapExport.USUAL_BEAM_M, ENGLISH)),
                StandardCharsets.UTF_8));
        for (Sheet sheet : List.of(SettingOutSchedule.of(evaluation, DAY).sheet(ENGLISH),
                PublishedData.of(evaluation).sheet(ENGLISH), LoadSchedule.of(evaluation.project()).sheet(ENGLISH))) {
            texts.add(new String(SheetFile.csv(sheet), StandardCharsets.UTF_8));
        }
        return texts;
    }

    private static String numbers(Argument argument) {
        if (argument instanceof Argument.Quantity quantity) {
            return quantity.value() + " " + quantity.notation();
        }
        if (argument instanceof Argument.Term term) {
            return term.key();
        }
        if (argument instanceof Argument.Series series) {
            return series.items().stream().map(Results::numbers).toList().toString();
        }
        return argument instanceof Message message ? message.key() + message.arguments().stream().map(Results::numbers).toList() : "";
    }

    /** Returns whether a rule only looks whether an entry can be true, so that no result is made of it. */
    static boolean isPlausibility(Outcome outcome) {
        return RuleCatalogue.find(outcome.rule()).filter(rule -> rule.getClass().getPackageName().endsWith(".plausible")).isPresent();
    }

    /** Returns the names that a sentence holds. */
    static Set<String> names(Argument argument) {
        Set<String> names = new HashSet<>();
        if (argument instanceof Argument.Name name) {
            names.add(name.text());
        } else if (argument instanceof Argument.Series series) {
            series.items().forEach(item -> names.addAll(names(item)));
        } else if (argument instanceof Message message) {
            message.arguments().forEach(item -> names.addAll(names(item)));
        }
        return names;
    }
}
