package slopewright.headless.internal;

import java.util.List;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import slopewright.evaluation.tolerance.Distribution;
import slopewright.evaluation.tolerance.Sensitivity;
import slopewright.evaluation.tolerance.ToleranceStudy;
import slopewright.evaluation.tolerance.Tolerances;
import slopewright.evaluation.tolerance.WorstCase;
import slopewright.messages.Message;

/** Studies what goes wrong by how much when units are set a little wrong. */
@CommandLine.Command(name = "tolerance", sortOptions = false,
        description = "Tell what goes wrong by how much when the units of an aid are set, levelled or placed a little wrong: "
                + "sensitivities, worst case and random trials.")
final class ToleranceCommand extends Command {

    @Mixin
    private AidWords words;

    @Option(names = "--angle-minutes", defaultValue = "" + Tolerances.USUAL_ANGLE_MINUTES, paramLabel = "MIN", converter = NumberWord.class,
            description = "each angle may be wrong by so much to both sides (default ${DEFAULT-VALUE}, common practice)")
    private double angleMinutes;

    @Option(names = "--level-m", defaultValue = "" + Tolerances.USUAL_LEVEL_M, paramLabel = "M", converter = NumberWord.Length.class,
            description = "each lens may stand so much too high or low (default ${DEFAULT-VALUE}, common practice)")
    private double levelM;

    @Option(names = "--place-m", defaultValue = "" + Tolerances.USUAL_PLACE_M, paramLabel = "M", converter = NumberWord.Length.class,
            description = "each unit may stand so much too far along the runway (default ${DEFAULT-VALUE}, common practice)")
    private double placeM;

    @Option(names = "--samples", defaultValue = "10000", paramLabel = "N",
            description = "random trials, 0 for none (default ${DEFAULT-VALUE})")
    private int samples;

    @Option(names = "--seed", defaultValue = "1", paramLabel = "S",
            description = "where the random numbers start (default ${DEFAULT-VALUE})")
    private long seed;

    @Option(names = "--json", description = "print one JSON document")
    private boolean json;

    @Override
    public Integer call() {
        Tolerances tolerances = new Tolerances(angleMinutes, levelM, placeM);
        AidWords.Named named = words.load();
        ToleranceStudy study = ToleranceStudy.of(named.evaluation(), tolerances, samples, seed);
        Judged judged = Judged.of(words.projectEvaluation(named), named.aid());
        judged.tellOfAid(streams(), "tolerance");
        if (json) {
            Json.print(json(named.aid().getId(), study), judged.made(), streams().out);
        } else {
            print(study);
        }
        return ExitCodes.OK;
    }

    private static ObjectNode json(String aid, ToleranceStudy study) {
        ObjectNode node = Json.object();
        node.put("aid", aid);
        node.put("family", study.family());
        node.put("ruleSet", study.ruleSet());
        Json.put(node, "angleMinutes", study.tolerances().angleMinutes());
        Json.put(node, "levelM", study.tolerances().levelM());
        Json.put(node, "placeM", study.tolerances().placeM());
        node.put("samples", study.samples());
        node.put("seed", study.seed());
        ArrayNode quantities = node.putArray("quantities");
        study.worst().forEach(worst -> quantities.add(quantity(study, worst)));
        strings(node.putArray("rows"), study.rows());
        strings(node.putArray("notes"), study.notes());
        return node;
    }

    private static ObjectNode quantity(ToleranceStudy study, WorstCase worst) {
        ObjectNode node = Json.object();
        node.put("quantity", worst.quantity().key());
        Json.put(node, "nominalM", worst.nominalM());
        Json.put(node, "linearM", worst.linearM());
        Json.put(node, "lowM", worst.lowM());
        Json.put(node, "highM", worst.highM());
        study.distribution(worst.quantity()).ifPresent(distribution -> node.set("trials", trials(distribution)));
        ArrayNode list = node.putArray("sensitivities");
        for (Sensitivity sensitivity : study.sensitivities()) {
            if (sensitivity.quantity() == worst.quantity()) {
                ObjectNode source = list.addObject();
                source.put("cause", sensitivity.source().message().english());
                Json.put(source, "tolerance", sensitivity.source().tolerance());
                source.put("unit", sensitivity.source().kind().unit());
                Json.put(source, "perUnit", sensitivity.perUnit());
                Json.put(source, "lowM", sensitivity.lowM());
                Json.put(source, "highM", sensitivity.highM());
            }
        }
        return node;
    }

    private static ObjectNode trials(Distribution distribution) {
        ObjectNode node = Json.object();
        node.put("samples", distribution.samples());
        Json.put(node, "meanM", distribution.meanM());
        Json.put(node, "deviationM", distribution.deviationM());
        ArrayNode list = node.putArray("percentiles");
        for (Distribution.Percentile point : distribution.percentiles()) {
            ObjectNode percentile = list.addObject();
            Json.put(percentile, "percent", point.percent());
            Json.put(percentile, "valueM", point.valueM());
        }
        return node;
    }

    private static void strings(ArrayNode target, List<Message> texts) {
        texts.stream().map(Message::english).forEach(target::add);
    }

    private void print(ToleranceStudy study) {
        study.rows().forEach(row -> streams().say(row.english()));
        study.notes().forEach(note -> streams().say("Note: " + note.english()));
    }
}
