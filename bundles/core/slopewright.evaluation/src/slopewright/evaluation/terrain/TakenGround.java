package slopewright.evaluation.terrain;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;

import slopewright.evaluation.AidEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ProfilePoint;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.siting.SitingException;
import slopewright.siting.UnitPlan;

/**
 * The ground in the line of the units of an aid as models of the terrain have it, to be taken into the project as its site profile. It says
 * of itself that it is of a model and how well that knows the ground: rule DATA-68 says where that is too coarse.
 *
 * @param places    places along the runway in their order, each with its ground
 * @param source    the models, by name and source
 * @param date      the day of the oldest of them
 * @param accuracyM how well the least known place is known, metres
 */
public record TakenGround(List<TakenPlace> places, String source, String date, double accuracyM) {

    /**
     * One place.
     *
     * @param alongM     from the threshold in the landing direction, metres
     * @param elevationM elevation of the ground, metres
     */
    public record TakenPlace(double alongM, double elevationM) {
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
     * @throws SitingException where there is no layout or no frame, or where no model knows a place: nothing is made up between
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
        List<TerrainField> models = TerrainField.of(aid.surroundings().orThrow());
        TreeSet<String> sources = new TreeSet<>();
        TreeSet<String> dates = new TreeSet<>();
        List<TakenPlace> places = new ArrayList<>();
        double worstM = 0;
        for (double place : along) {
            KnownGround ground = KnownGround.at(models, place, rightM).orElseThrow(() -> new SitingException(Message.of(
                    "terrain.not-known", Words.m(place), Words.m(rightM))));
            places.add(new TakenPlace(place, aid.frame().orThrow().originElevationM() + ground.heightM()));
            sources.add(ground.label());
            dates.add(ground.date());
            worstM = Math.max(worstM, ground.accuracyM());
        }
        return new TakenGround(places, sources.stream().collect(Collectors.joining("; ")), dates.first(), worstM);
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
