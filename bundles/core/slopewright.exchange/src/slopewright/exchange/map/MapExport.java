package slopewright.exchange.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
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
     * @return the features, and what could not be shown among the notes
     * @throws SitingException where the project has no aerodrome, or its coordinates are a local plane or unknown
     */
    public static MapDocument of(ProjectEvaluation evaluation, List<AidEvaluation> aids, double beamLengthM) {
        Project project = evaluation.project();
        Aerodrome aerodrome = project.getAerodrome();
        if (aerodrome == null) {
            throw new SitingException(Message.of("map.refused.no-aerodrome"));
        }
        AerodromePlaces places = AerodromePlaces.of(aerodrome);
        if (places.isPlane()) {
            throw new SitingException(Message.of("map.refused.local-plane"));
        }
        List<String> notes = new ArrayList<>(notes(aerodrome, beamLengthM));
        List<MapFeature> features = new ArrayList<>();
        aids.forEach(aid -> add(aid, beamLengthM, features, notes));
        GroundFeatures.add(aerodrome, features, notes);
        ObstacleFeatures.add(aerodrome, places, aids, features, notes);
        SurveyPointFeatures.add(aids, features, notes);
        OptionalDouble geoid = aerodrome.getGeoidOffsetM() == null ? OptionalDouble.empty()
                : OptionalDouble.of(aerodrome.getGeoidOffsetM());
        return new MapDocument(project.getName() == null ? "Slopewright project" : project.getName(), datum(aerodrome), geoid,
                notes.stream().distinct().toList(), MadeFrom.of(evaluation), features);
    }

    private static void add(AidEvaluation aid, double beamLengthM, List<MapFeature> features, List<String> notes) {
        Optional<SiteFrame> frame = frame(aid.host(), notes);
        aid.siting().reason().map(Message::english).ifPresent(reason -> notes.add(aid.aid().getId() + " is not shown: " + reason));
        if (frame.isEmpty() || aid.siting().value().isEmpty()) {
            return;
        }
        List<MapFeature> own = new ArrayList<>();
        try {
            new AidFeatures(aid, aid.siting().value().get(), frame.get(), beamLengthM, notes).addTo(own);
            features.addAll(own);
        } catch (SitingException | IllegalArgumentException e) {
            notes.add(aid.aid().getId() + " is not shown: " + e.getMessage());
        }
    }

    private static String datum(Aerodrome aerodrome) {
        return aerodrome.getVerticalDatum() == null ? "not known" : aerodrome.getVerticalDatum();
    }

    private static List<String> notes(Aerodrome aerodrome, double beamLengthM) {
        return List.of("A design aid: it does not replace the standard, the authority's approval, ground survey or flight inspection.",
                "Horizontal datum WGS 84. Heights are elevations in metres in the vertical datum: " + datum(aerodrome) + ".",
                String.format(Locale.ROOT, "Beams are drawn to %s m from the lens, with the Earth's curvature and without refraction. "
                        + "Obstacle surfaces compare elevations and have no curvature.", MapFacts.plain(beamLengthM)));
    }

    static Optional<SiteFrame> frame(ApproachHost host, List<String> notes) {
        try {
            return Optional.of(SiteFrame.of(host));
        } catch (SitingException e) {
            notes.add(host.getId() + " is not shown: " + e.getMessage());
            return Optional.empty();
        }
    }
}
