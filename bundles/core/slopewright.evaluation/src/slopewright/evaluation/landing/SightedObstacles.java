package slopewright.evaluation.landing;

import java.util.ArrayList;
import java.util.List;

import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachHost;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.SlopewrightFactory;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;

/**
 * Makes obstacles of what was measured by bearing, distance and height or clinometer from the hover point. Each keeps what was measured in
 * its remarks, and the accuracy of the instrument as that of its survey. They hang nowhere yet.
 */
public final class SightedObstacles {
    private static final int WIRE_PIECES = 16;
    private static final int CROWN_CORNERS = 8;

    private final SiteFrame frame;
    private final Sighting.Instrument instrument;

    /**
     * Measures from a helipad.
     *
     * @param host       an approach direction of it
     * @param instrument how exactly is measured
     * @throws SitingException where its place or elevation is missing; the message names what
     */
    public SightedObstacles(ApproachHost host, Sighting.Instrument instrument) {
        frame = SiteFrame.of(host);
        this.instrument = instrument;
    }

    /** Makes a point: a mast, a single tree top. */
    public Obstacle point(String name, Sighting top) {
        return made(name, ObstacleKind.POINT, List.of(top), List.of(at(top)), top.message());
    }

    /**
     * Makes a tree or a group of them: the ring round a crown, which lies wholly within it.
     *
     * @param name    what it is called
     * @param top     its top, from the middle of the crown
     * @param radiusM radius of the crown, metres, more than zero
     */
    public Obstacle tree(String name, Sighting top, double radiusM) {
        if (!(radiusM > 0)) {
            throw new SitingException(Message.of("landing.sighted.negative"));
        }
        FramePoint middle = at(top);
        double reach = radiusM / Math.cos(Math.PI / CROWN_CORNERS);
        List<FramePoint> ring = new ArrayList<>();
        for (int i = 0; i < CROWN_CORNERS; i++) {
            double angle = 2 * Math.PI * i / CROWN_CORNERS;
            ring.add(new FramePoint(middle.alongM() + reach * Math.cos(angle), middle.rightM() + reach * Math.sin(angle),
                    middle.heightM()));
        }
        return made(name, ObstacleKind.AREA, List.of(top), ring, Message.of("landing.sighted.tree", top.message(), Words.m(radiusM)));
    }

    /**
     * Makes a wire between two supports. It hangs as a parabola; the straight pieces that stand for it lie nowhere below it.
     *
     * @param name what it is called
     * @param from where it is fixed at one end
     * @param to   where it is fixed at the other
     * @param sagM how far its middle hangs below the straight line between them, metres, zero or more
     */
    public Obstacle wire(String name, Sighting from, Sighting to, double sagM) {
        if (!(sagM >= 0)) {
            throw new SitingException(Message.of("landing.sighted.negative"));
        }
        FramePoint start = at(from);
        FramePoint end = at(to);
        List<FramePoint> line = new ArrayList<>();
        int pieces = sagM == 0 ? 1 : WIRE_PIECES;
        for (int i = 0; i <= pieces; i++) {
            double share = (double) i / pieces;
            FramePoint straight = start.towards(end, share);
            line.add(straight.atHeight(straight.heightM() - 4 * sagM * share * (1 - share)));
        }
        return made(name, ObstacleKind.LINE, List.of(from, to), line,
                Message.of("landing.sighted.wire", from.message(), to.message(), Words.m(sagM)));
    }

    /** Makes a slope of the ground, or whatever else rises evenly between two places: straight from one to the other. */
    public Obstacle slope(String name, Sighting near, Sighting far) {
        return made(name, ObstacleKind.LINE, List.of(near, far), List.of(at(near), at(far)),
                Message.of("landing.sighted.slope", near.message(), far.message()));
    }

    private FramePoint at(Sighting top) {
        double angle = Math.toRadians(top.trueDeg() - frame.bearingDeg());
        return new FramePoint(top.distanceM() * Math.cos(angle), top.distanceM() * Math.sin(angle), top.topM(instrument));
    }

    private Obstacle made(String name, ObstacleKind kind, List<Sighting> sightings, List<FramePoint> points, Message measured) {
        Obstacle obstacle = SlopewrightFactory.eINSTANCE.createObstacle();
        obstacle.setName(name);
        obstacle.setKind(kind);
        for (FramePoint point : points) {
            Place place = SlopewrightFactory.eINSTANCE.createPlace();
            frame.fromFrame(point, place);
            place.setElevationM(Math.round((frame.originElevationM() + point.heightM()) * 1000) / 1000.0);
            obstacle.getPlaces().add(place);
        }
        obstacle.setHorizontalAccuracyM(upM(sightings.stream().mapToDouble(top -> top.horizontalAccuracyM(instrument)).max()
                .orElseThrow()));
        obstacle.setVerticalAccuracyM(upM(sightings.stream().mapToDouble(top -> top.verticalAccuracyM(instrument)).max()
                .orElseThrow()));
        obstacle.setSource(Message.of("landing.sighted.source").english());
        obstacle.setRemarks(Message.of("landing.sighted", measured, instrument.message()).english());
        return obstacle;
    }

    /** Rounds up to a centimetre: an accuracy is never made better. */
    private static double upM(double metres) {
        return Math.ceil(metres * 100 - 1e-6) / 100;
    }
}
