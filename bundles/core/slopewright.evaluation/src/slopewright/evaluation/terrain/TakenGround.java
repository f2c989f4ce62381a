package slopewright.evaluation.terrain;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.UnitGround;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ProfilePoint;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;
import slopewright.siting.ElementNames;
import slopewright.siting.SitingException;
import slopewright.siting.UnitPlan;

/**
 * The ground in the line of the units of an aid as models of the terrain have it, to be taken into the project as its site profile. It says
 * of itself that it is of a model and how well that knows the ground: rule DATA-68 says where that is too coarse.
 *
 * @param places    places along the runway in their order, each with its ground
 * @param rightM    how far to the right of the centre line the line of the units lies, metres
 * @param source    the models, by name and source
 * @param date      the day of the oldest of them
 * @param accuracyM how well the least known place is known, metres
 */
public record TakenGround(List<TakenPlace> places, double rightM, String source, String date, double accuracyM) {

    /** From one place to the next where nobody asks for another step, metres. */
    public static final double USUAL_STEP_M = 50;

    /**
     * One place.
     *
     * @param alongM     from the threshold in the landing direction, metres
     * @param elevationM elevation of the ground, metres
     * @param accuracyM  by how much it may be higher or lower, metres
     * @param model      the model that knows it best, by name
     * @param presentM   elevation of the ground as the project has it now, metres; empty where it says nothing of the place
     */
    public record TakenPlace(double alongM, double elevationM, double accuracyM, String model, OptionalDouble presentM) {
    }

    /** Copies the list. */
    public TakenGround {
        places = List.copyOf(places);
    }

    /**
     * Reads the ground from the threshold to the farthest unit, at least at both and at each unit.
     *
     * @param aid   an aid at a runway end that has a layout
     * @param stepM from one place to the next, metres, more than zero
     * @throws SitingException where there is no layout or no frame, no model or one that cannot be read, or where no model knows a place:
     *                         nothing is made up between
     */
    public static TakenGround of(AidEvaluation aid, double stepM) {
        if (!(aid.host() instanceof RunwayEnd)) {
            throw new SitingException(Message.of("terrain.no-runway"));
        }
        List<UnitPlan> units = aid.siting().orThrow().units();
        double rightM = units.stream().mapToDouble(unit -> unit.place().rightM()).average().orElse(0);
        double lastM = units.stream().mapToDouble(unit -> unit.place().alongM()).max().orElse(0);
        TreeSet<Double> along = new TreeSet<>(List.of(0.0, lastM));
        for (double next = stepM; next < lastM; next += stepM) {
            along.add(next);
        }
        units.forEach(unit -> along.add(unit.place().alongM()));
        List<TerrainField> models = models(aid.surroundings().orThrow());
        UnitGround present = UnitGround.of(aid.aid());
        double datumM = aid.frame().orThrow().originElevationM();
        TreeSet<String> sources = new TreeSet<>();
        TreeSet<String> dates = new TreeSet<>();
        List<TakenPlace> places = new ArrayList<>();
        double worstM = 0;
        for (double place : along) {
            KnownGround ground = KnownGround.at(models, place, rightM).orElseThrow(() -> new SitingException(Message.of(
                    "terrain.not-known", Words.m(place), Words.m(rightM))));
            OptionalDouble now = present.heightM(place);
            places.add(new TakenPlace(place, datumM + ground.heightM(), ground.accuracyM(), ground.name(),
                    now.isPresent() ? OptionalDouble.of(datumM + now.getAsDouble()) : now));
            sources.add(ground.label());
            dates.add(ground.date());
            worstM = Math.max(worstM, ground.accuracyM());
        }
        return new TakenGround(places, rightM, sources.stream().collect(Collectors.joining("; ")), dates.first(), worstM);
    }

    /** Returns the models, or says why there is none that counts: one that could not be read is named before one that is not there. */
    private static List<TerrainField> models(Surroundings around) {
        List<TerrainField> models = TerrainField.of(around);
        around.uncompared().stream().filter(each -> each.element() instanceof SurveyBlock block && isModel(block)).findFirst()
                .ifPresent(unread -> {
                    throw new SitingException(Message.of("terrain.unread", Words.name(unread.label()), unread.reason()));
                });
        if (models.isEmpty()) {
            Stream<SurveyBlock> unsaid = around.blocks().stream().map(Surroundings.Block::block).filter(TakenGround::isModel);
            throw new SitingException(unsaid.findFirst().map(block -> Message.of("terrain.without-accuracy", ElementNames.of(block)))
                    .orElseGet(() -> Message.of("terrain.none")));
        }
        return models;
    }

    private static boolean isModel(SurveyBlock block) {
        return TerrainField.KIND.equals(block.getKind());
    }

    /** Replaces the site profile of a runway end by it, marked with its models, their day and how well they know it. */
    public void into(RunwayEnd end) {
        end.getSiteProfile().clear();
        for (TakenPlace place : places) {
            ProfilePoint point = SlopewrightFactory.eINSTANCE.createProfilePoint();
            point.setChainageM(rounded(place.alongM()));
            point.setElevationM(rounded(place.elevationM()));
            end.getSiteProfile().add(point);
        }
        end.setSiteProfileSource("model of the terrain, no survey (" + source + ")");
        end.setSiteProfileDate(date);
        end.setSiteProfileAccuracyM(Math.ceil(accuracyM * 1000) / 1000);
    }

    private static double rounded(double metres) {
        return Math.round(metres * 1000) / 1000.0;
    }
}
