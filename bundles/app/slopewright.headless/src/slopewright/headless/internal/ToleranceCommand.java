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

/** Studies what goes wrong by how much when units are set a little wrong. */
@CommandLine.Command(name = "tolerance", sortOptions = false,
        description = "Tell what goes wrong by how much when the units of an aid are set, levelled or placed a little wrong: "
                + "sensitivities, worst case and random trials.")
final class ToleranceCommand extends Command {

    @Mixin
    private AidWords words;

    @Option(names = "--angle-minutes", defaultValue = "3", paramLabel = "MIN", converter = NumberWord.class,
            description = "each angle may be wrong by so much to both sides (default ${DEFAULT-VALUE}, common practice)")
    private double angleMinutes;

    @Option(names = "--level-m", defaultValue = "0.05", paramLabel = "M", converter = NumberWord.Length.class,
            description = "each lens may stand so much too high or low (default ${DEFAULT-VALUE}, common practice)")
    private double levelM;

    @Option(names = "--place-m", defaultValue = "0.5", paramLabel = "M", converter = NumberWord.Length.class,
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
        if (json) {
            Json.print(json(named.aid().getId(), study), streams().out);
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
        study.chance(worst.quantity()).ifPresent(chance -> node.set("trials", trials(chance)));
        ArrayNode list = node.putArray("sensitivities");
        for (Sensitivity one : study.sensitivities()) {
            if (one.quantity() == worst.quantity()) {
                ObjectNode cause = list.addObject();
                cause.put("cause", one.cause().label());
                Json.put(cause, "tolerance", one.cause().tolerance());
                cause.put("unit", one.cause().kind().unit());
                Json.put(cause, "perUnit", one.perUnit());
                Json.put(cause, "lowM", one.lowM());
                Json.put(cause, "highM", one.highM());
            }
        }
        return node;
    }

    private static ObjectNode trials(Distribution chance) {
        ObjectNode node = Json.object();
        node.put("samples", chance.samples());
        Json.put(node, "meanM", chance.meanM());
        Json.put(node, "deviationM", chance.deviationM());
        ArrayNode list = node.putArray("percentiles");
        for (Distribution.Percentile one : chance.percentiles()) {
            ObjectNode percentile = list.addObject();
            Json.put(percentile, "percent", one.percent());
            Json.put(percentile, "valueM", one.valueM());
        }
        return node;
    }

    private static void strings(ArrayNode target, List<String> texts) {
        texts.forEach(target::add);
    }

    private void print(ToleranceStudy study) {
        study.rows().forEach(streams()::say);
        study.notes().forEach(note -> streams().say("Note: " + note));
    }
}
