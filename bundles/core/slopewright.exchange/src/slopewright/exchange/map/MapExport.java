package slopewright.exchange.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.siting.SitingException;
import slopewright.siting.site.AerodromePlaces;
import slopewright.siting.site.SiteFrame;

/**
 * Puts a project on the map: units and their beams, obstacle surfaces, runways and helipads, and obstacles with how they stand against
 * the surfaces. Elevations are those of the vertical datum of the aerodrome. Surfaces compare elevations and have no curvature; beams
 * are lines of sight and rise above a level surface as the Earth curves away under them, without refraction. What stands against a
 * surface is read from the evaluation of its aid; of the points of survey blocks those are shown that govern or stand through.
 */
public final class MapExport {

    /** How far beams are drawn where nothing else is asked for, metres. */
    public static final double USUAL_BEAM_M = 5000;

    /** The farthest that beams are drawn, metres. */
    public static final double MOST_BEAM_M = 50_000;

    private MapExport() {
    }

    /**
     * Makes the features.
     *
     * @param evaluation  the project with what its aids give
     * @param aids        those of its aids that are shown
     * @param beamLengthM how far beams are drawn, metres, more than zero
     * @param renderer    the language of names and notes
     * @return the features, and what could not be shown among the notes
     * @throws SitingException where the project has no aerodrome, or its coordinates are a local plane or unknown
     */
    public static MapDocument of(ProjectEvaluation evaluation, List<AidEvaluation> aids, double beamLengthM, MessageRenderer renderer) {
        Project project = evaluation.project();
        Aerodrome aerodrome = project.getAerodrome();
        if (aerodrome == null) {
            throw new SitingException(Message.of("map.refused.no-aerodrome"));
        }
        AerodromePlaces places = AerodromePlaces.of(aerodrome);
        if (places.isPlane()) {
            throw new SitingException(Message.of("map.refused.local-plane"));
        }
        MapWords words = new MapWords(renderer);
        note(words, aerodrome, beamLengthM);
        List<MapFeature> features = new ArrayList<>();
        aids.forEach(aid -> add(aid, beamLengthM, features, words));
        GroundFeatures.add(aerodrome, features, words);
        ObstacleFeatures.add(aerodrome, places, aids, features, words);
        SurveyPointFeatures.add(aids, features, words);
        return new MapDocument(project.getName() == null ? words.say(Message.of("map.unnamed")) : project.getName(),
                MapBasis.of(aerodrome, words.say(datum(aerodrome))), words.notes(), MadeFrom.of(evaluation), features, renderer);
    }

    private static void add(AidEvaluation aid, double beamLengthM, List<MapFeature> features, MapWords words) {
        Optional<SiteFrame> frame = frame(aid.host(), words);
        aid.siting().reason().ifPresent(reason -> words.notShown(aid.aid().getId(), reason));
        if (frame.isEmpty() || aid.siting().value().isEmpty()) {
            return;
        }
        List<MapFeature> own = new ArrayList<>();
        try {
            new AidFeatures(aid, aid.siting().value().get(), frame.get(), beamLengthM, words).addTo(own);
            features.addAll(own);
        } catch (SitingException | IllegalArgumentException e) {
            words.notShown(aid.aid().getId(), e);
        }
    }

    private static Argument datum(Aerodrome aerodrome) {
        return aerodrome.getVerticalDatum() == null ? Words.term("report.not-known") : Words.name(aerodrome.getVerticalDatum());
    }

    private static void note(MapWords words, Aerodrome aerodrome, double beamLengthM) {
        words.note(Message.of("map.design-aid"));
        words.note(Message.of("map.datum", datum(aerodrome)));
        words.note(Message.of("map.beams", Words.quantity(beamLengthM, Notation.EXACT)));
    }

    static Optional<SiteFrame> frame(ApproachHost host, MapWords words) {
        try {
            return Optional.of(SiteFrame.of(host));
        } catch (SitingException e) {
            words.notShown(host.getId(), e);
            return Optional.empty();
        }
    }
}
