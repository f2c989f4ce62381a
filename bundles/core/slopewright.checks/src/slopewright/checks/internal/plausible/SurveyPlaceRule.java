package slopewright.checks.internal.plausible;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Identified;
import slopewright.model.Obstacle;
import slopewright.model.SurveyBlock;
import slopewright.siting.ElementNames;

/**
 * What was surveyed together stands where the indicators are: of three obstacles and more with one source and date, and of a block of
 * points, something lies within the obstacle surface of an indicator (own band, common practice). Where nothing does, as after a slip in
 * the degrees or minutes of a whole file or in its datum, it is compared with nothing and nothing seems to stand there; it is not
 * evaluated until somebody read it back. Severity fail for that reason.
 */
public final class SurveyPlaceRule extends ProjectRule {
    private static final int SEVERAL = 3;

    private record Survey(String source, String date) {
    }

    /** Made by the service loader. */
    public SurveyPlaceRule() {
        super("DATA-74", Severity.FAIL);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        List<SurfaceComparison> surfaces = evaluation.aids().stream().map(AidEvaluation::obstacles).flatMap(found -> found.value().stream())
                .toList();
        if (evaluation.project().getAerodrome() == null || surfaces.isEmpty()) {
            return;
        }
        Set<Identified> within = new HashSet<>();
        surfaces.forEach(surface -> surface.inside().forEach(found -> within.add(found.element())));
        SecondReading reading = new SecondReading(evaluation.project(), outcomes);
        surveys(evaluation.project().getAerodrome().getObstacles()).forEach((survey, together) -> {
            if (together.size() >= SEVERAL) {
                look(together, Words.name(survey.source()), within, reading, outcomes);
            }
        });
        for (SurveyBlock block : evaluation.project().getSurveyBlocks()) {
            look(List.of(block), ElementNames.of(block), within, reading, outcomes);
        }
    }

    /** Returns what was surveyed together, in the order of identifiers: the first speaks for all, however the file is sorted. */
    private static Map<Survey, List<Obstacle>> surveys(List<Obstacle> obstacles) {
        Map<Survey, List<Obstacle>> found = new LinkedHashMap<>();
        for (Obstacle obstacle : obstacles) {
            if (obstacle.getSource() != null && obstacle.getDate() != null) {
                found.computeIfAbsent(new Survey(obstacle.getSource(), obstacle.getDate()), key -> new ArrayList<>()).add(obstacle);
            }
        }
        found.values().forEach(together -> together.sort(Comparator.comparing(Identified::getId)));
        return found;
    }

    private static void look(List<? extends Identified> together, Argument name, Set<Identified> within, SecondReading reading,
            OutcomeCollector outcomes) {
        if (together.stream().anyMatch(within::contains)) {
            outcomes.about(together.get(0)).met(true).saying("within", name).add();
            return;
        }
        Optional<? extends Identified> open = together.stream().filter(element -> !reading.isAnswered(element)).findFirst();
        reading.ask(open.isPresent() ? open.get() : together.get(0), Message.of("DATA-74.outside", name));
    }
}
