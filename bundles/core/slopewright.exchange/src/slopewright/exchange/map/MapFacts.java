package slopewright.exchange.map;

import java.util.ArrayList;
import java.util.List;

import slopewright.exchange.internal.PlainNumbers;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;

/** What the makers of features share. */
final class MapFacts {

    /** A straight edge of the frame is cut into pieces no longer than this, so that it stays one on a map of degrees: 0.02 m at most. */
    private static final double PIECE_M = 1000;

    /** Longer lines are no longer those of an aerodrome: something in the project is wrong. */
    private static final double MOST_M = 200_000;

    private MapFacts() {
    }

    static String plain(double value) {
        return PlainNumbers.property(value).toPlainString();
    }

    static MapPosition position(SiteFrame frame, FramePoint point) {
        SiteFrame.LatLon place = frame.latLon(point.atHeight(0)).orElseThrow();
        return new MapPosition(place.latitudeDeg(), place.longitudeDeg(), point.heightM() + frame.originElevationM());
    }

    /** Brings a line of straight pieces of the frame onto the map. */
    static List<MapPosition> line(SiteFrame frame, List<FramePoint> points) {
        List<MapPosition> line = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            addPieces(frame, points.get(i - 1), points.get(i), line);
        }
        line.add(position(frame, points.get(points.size() - 1)));
        return line;
    }

    /** Brings a ring of straight pieces of the frame onto the map. */
    static List<MapPosition> ring(SiteFrame frame, List<FramePoint> corners) {
        List<MapPosition> ring = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            addPieces(frame, corners.get(i), corners.get((i + 1) % corners.size()), ring);
        }
        return ring;
    }

    /** Adds the start of a piece and the places within it, not its end. */
    private static void addPieces(SiteFrame frame, FramePoint from, FramePoint to, List<MapPosition> line) {
        double length = Math.hypot(to.alongM() - from.alongM(), to.rightM() - from.rightM());
        if (!(length <= MOST_M)) {
            throw new SitingException(Message.of("map.refused.line-too-long", Words.km(length), Words.km(MOST_M)));
        }
        int pieces = (int) Math.max(1, Math.ceil(length / PIECE_M));
        for (int i = 0; i < pieces; i++) {
            line.add(position(frame, from.towards(to, (double) i / pieces)));
        }
    }
}
