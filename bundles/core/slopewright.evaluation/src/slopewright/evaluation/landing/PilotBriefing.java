package slopewright.evaluation.landing;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.DoubleStream;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.comparison.VisibleRange;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.portable.Azimuth;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Lengths;
import slopewright.messages.Argument;
import slopewright.siting.ElementNames;
import slopewright.siting.LightRhythm;
import slopewright.siting.SeenUnit;
import slopewright.siting.SignalBand;
import slopewright.siting.Siting;
import slopewright.siting.magnetic.SiteVariation;

/**
 * What a pilot is told before landing on an indicator.
 *
 * @param label     the aid, for people
 * @param date      the day, for the magnetic variation
 * @param azimuth   the landing direction, true and by compass
 * @param siting    the layout as it stands
 * @param bands     what is seen, the highest first
 * @param heights   heights of the path on the way in, the farthest first
 * @param range     from how far it is seen by day and at night
 * @param obstacles what lies within the obstacle surface, the least margin first
 */
public record PilotBriefing(Argument label, LocalDate date, Azimuth azimuth, Siting siting, List<Seen> bands, List<PathHeight> heights,
        VisibleRange range, List<ObstacleComparison> obstacles) {
    private static final double[] NAUTICAL_MILES = {3, 2, 1, 0.5};
    private static final int MOST_OBSTACLES = 8;

    /**
     * What is seen between two angles.
     *
     * @param band    the pattern and its angles
     * @param rhythms how each light of the pattern goes on and off, in its order
     */
    public record Seen(SignalBand band, List<LightRhythm> rhythms) {

        /** Copies the list. */
        public Seen {
            rhythms = List.copyOf(rhythms);
        }
    }

    /**
     * The path at one distance.
     *
     * @param distanceNm before the threshold or the hover point, nautical miles
     * @param distanceM  the same, metres
     * @param heightM    height of the slope above the threshold or TLOF, metres
     * @param altitudeM  its elevation, metres in the datum of the aerodrome
     */
    public record PathHeight(double distanceNm, double distanceM, double heightM, double altitudeM) {
    }

    /** Copies the lists. */
    public PilotBriefing {
        Objects.requireNonNull(azimuth);
        Objects.requireNonNull(range);
        bands = List.copyOf(bands);
        heights = List.copyOf(heights);
        obstacles = List.copyOf(obstacles);
    }

    /**
     * Works the briefing of an aid out.
     *
     * @param evaluation the evaluation of the aid
     * @param date       the day
     * @return the briefing
     * @throws slopewright.siting.SitingException where there is no layout, frame or variation; the message says why
     */
    public static PilotBriefing of(AidEvaluation evaluation, LocalDate date) {
        Siting siting = evaluation.layout().orThrow();
        Azimuth azimuth = Azimuth.of(evaluation.frame().orThrow().bearingDeg(), 0, SiteVariation.of(evaluation.host(), date));
        List<Seen> bands = SignalBand.of(siting).stream().sorted(Comparator.comparingDouble(SignalBand::fromDeg).reversed())
                .map(band -> new Seen(band, band.seen().seen().stream().map(seen -> rhythm(evaluation, seen)).toList())).toList();
        double datum = evaluation.frame().orThrow().originElevationM();
        List<PathHeight> heights = DoubleStream.of(NAUTICAL_MILES).mapToObj(miles -> height(siting, miles, datum)).toList();
        List<ObstacleComparison> obstacles = evaluation.obstacles().value().map(compared -> compared.inside().stream()
                .sorted(Comparator.comparingDouble(ObstacleComparison::marginM)).limit(MOST_OBSTACLES).toList()).orElse(List.of());
        return new PilotBriefing(ElementNames.way(evaluation.aid()), date, azimuth, siting, bands, heights,
                VisibleRange.of(evaluation, siting), obstacles);
    }

    private static LightRhythm rhythm(AidEvaluation evaluation, SeenUnit seen) {
        return LightRhythm.of(String.valueOf(evaluation.aid().getFamilyKey()), evaluation.rules(), seen);
    }

    /** The slope starts at the lens: its height is that of the lens plus the way from there times the tangent of the slope. */
    private static PathHeight height(Siting siting, double miles, double datumM) {
        double distance = miles * Lengths.METRES_PER_NAUTICAL_MILE;
        FramePoint lens = siting.reference();
        double height = lens.heightM() + (distance + lens.alongM()) * Angles.tanDeg(siting.slopeDeg());
        return new PathHeight(miles, distance, height, datumM + height);
    }
}
