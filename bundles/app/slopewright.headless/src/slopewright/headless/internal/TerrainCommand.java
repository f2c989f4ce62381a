package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.SiteGround;
import slopewright.evaluation.terrain.KnownGround;
import slopewright.evaluation.terrain.TakenGround;
import slopewright.evaluation.terrain.TerrainField;
import slopewright.exchange.sheet.Sheet;
import slopewright.exchange.sheet.SheetCell;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;

/** Tells the ground under a runway and its units as a model of the terrain has it. */
@CommandLine.Command(name = "terrain", sortOptions = false,
        description = "Tell the ground under the units of an aid and along its runway as models of the terrain have it. A model is no "
                + "survey: no rule takes it for one, and it comes into a project with --take alone, marked as what it is. Exits 1 where a "
                + "place lies outside of every model, or is known no better than a survey must be.")
final class TerrainCommand extends Command {

    private static final double LEAST_STEP_M = 1;
    private static final int DECIMALS = 3;

    @Mixin
    private AidWords words;

    @Option(names = "--step-m", paramLabel = "M", converter = NumberWord.Length.class, defaultValue = "50",
            description = "from one place along the runway to the next (default ${DEFAULT-VALUE})")
    private double stepM;

    @Option(names = "--json", description = "print one JSON document")
    private boolean json;

    @Option(names = "--csv", description = "print a table")
    private boolean csv;

    @Option(names = "--take", description = "with -o: write a project in which the site profile of the runway end is that of the models, "
            + "marked as such; where they know it too coarsely that is not met until it is surveyed")
    private boolean take;

    @Mixin
    private OptionalOutput output;

    /** One place; what no model knows is empty. */
    private record Told(String what, double alongM, double rightM, Optional<KnownGround> ground, double datumM) {

        boolean isGoodEnough() {
            return accuracyM() <= SiteGround.SURVEY_TOLERANCE_M;
        }

        double elevationM() {
            return ground.map(known -> datumM + known.heightM()).orElse(Double.NaN);
        }

        double accuracyM() {
            return ground.map(KnownGround::accuracyM).orElse(Double.POSITIVE_INFINITY);
        }

        String state() {
            return ground.isEmpty() ? "not known" : isGoodEnough() ? "model" : "too coarse for a level";
        }

        String source() {
            return ground.map(KnownGround::source).orElse("");
        }

        String date() {
            return ground.map(KnownGround::date).orElse("");
        }
    }

    @Override
    public Integer call() {
        if (json && csv || !(stepM >= LEAST_STEP_M)) {
            throw new UsageException("--json and --csv exclude each other, and --step-m takes a metre or more");
        }
        AidWords.Named named = words.load();
        AidEvaluation aid = named.evaluation();
        Optional<Path> target = output.file();
        if (take != target.isPresent()) {
            throw new UsageException("--take and -o go together");
        }
        if (take) {
            return take(named, target.get());
        }
        List<Told> told;
        try {
            told = told(aid);
        } catch (SitingException e) {
            throw new UsageException(e.getMessage());
        }
        if (json) {
            Json.print(json(told), streams().out);
        } else if (csv) {
            streams().print(sheet(told));
        } else {
            told.forEach(each -> streams().say(line(each)));
            streams().sayf("A model is no survey; levels of a survey are known within %.2f m.", SiteGround.SURVEY_TOLERANCE_M);
        }
        return told.stream().noneMatch(each -> each.ground().isPresent()) ? ExitCodes.NOTHING_EVALUATED
                : told.stream().allMatch(Told::isGoodEnough) ? ExitCodes.OK : ExitCodes.FINDINGS;
    }

    private int take(AidWords.Named named, Path target) {
        try {
            TakenGround ground = TakenGround.of(named.evaluation(), stepM);
            RunwayEnd end = (RunwayEnd) named.evaluation().host();
            ground.into(end);
            Ids.assign(named.project());
            output.write(target, named.project());
            streams().sayf("%s: a site profile of %d places, known within %.2f m, from %s of %s", target, ground.places().size(),
                    ground.accuracyM(), ground.source(), ground.date());
        } catch (SitingException e) {
            throw new UsageException(e.getMessage());
        }
        return ExitCodes.OK;
    }

    private List<Told> told(AidEvaluation aid) {
        List<TerrainField> models = TerrainField.of(aid.surroundings().orThrow());
        double datum = aid.frame().orThrow().originElevationM();
        List<Told> told = new ArrayList<>();
        aid.siting().orThrow().units().forEach(unit -> told.add(new Told("unit " + unit.id(), unit.place().alongM(),
                unit.place().rightM(), KnownGround.at(models, unit.place().alongM(), unit.place().rightM()), datum)));
        double length = Projects.runway(aid.host()).map(Runway::getLengthM).orElse(0.0);
        for (double along = 0; along <= length && length > 0; along += stepM) {
            told.add(new Told("centre line", along, 0, KnownGround.at(models, along, 0), datum));
        }
        return told;
    }

    private static String line(Told told) {
        String place = String.format(Locale.ROOT, "%-12s %9.2f m along, %8.2f m right: ", told.what(), told.alongM(), told.rightM());
        return place + (told.ground().isEmpty() ? "not known" : String.format(Locale.ROOT, "%.2f m within %.2f m, %s (%s of %s)",
                told.elevationM(), told.accuracyM(), told.state(), told.source(), told.date()));
    }

    private static Sheet sheet(List<Told> all) {
        List<List<SheetCell>> rows = all.stream().map(told -> List.of(SheetCell.text(told.what()),
                SheetCell.number(told.alongM(), DECIMALS), SheetCell.number(told.rightM(), DECIMALS),
                SheetCell.number(told.elevationM(), DECIMALS, ""), SheetCell.number(told.accuracyM(), DECIMALS, ""),
                SheetCell.text(told.state()), SheetCell.text(told.source()), SheetCell.text(told.date()))).toList();
        return new Sheet("Terrain", List.of("what", "alongM", "rightM", "elevationM", "accuracyM", "state", "source", "date"), rows,
                List.of());
    }

    private static ObjectNode json(List<Told> all) {
        ObjectNode node = Json.object();
        ArrayNode places = node.putArray("places");
        for (Told told : all) {
            ObjectNode place = places.addObject();
            place.put("what", told.what());
            Json.put(place, "alongM", told.alongM());
            Json.put(place, "rightM", told.rightM());
            Json.put(place, "elevationM", told.elevationM());
            Json.put(place, "accuracyM", told.accuracyM());
            place.put("state", told.state());
            place.put("source", told.source());
            place.put("date", told.date());
        }
        return node;
    }
}
