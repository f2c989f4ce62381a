package slopewright.drawing.pilot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.geometry.FramePoint;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.Colour;

/**
 * What lies on the ground in a pilot's view: runway with edges, threshold and markings, or the areas of a helipad; level, at the height
 * of the origin. Markings and lights are those of the usual kind and stand for orientation only.
 *
 * @param shapes areas on the ground, the lowest first
 * @param lamps  lights of the runway, which are lit by night
 */
public record PilotGround(List<Shape> shapes, List<Lamp> lamps) {

    private static final double USUAL_WIDTH_M = 30;
    private static final double USUAL_LENGTH_M = 1500;
    private static final double EDGE_LIGHTS_M = 60;
    /** As far markings and lights are drawn apart from each other; no runway is longer, and another finding says so. */
    private static final double FARTHEST_MARKED_M = 30_000;
    private static final int CROSS_LIGHTS = 4;
    private static final double EDGE_LINE_M = 0.9;
    private static final double THRESHOLD_LINE_M = 1.8;

    /** What an area is. */
    public enum Part {
        /** Paved area. */
        PAVEMENT,
        /** Edge or threshold line. */
        LINE,
        /** Painted marking. */
        MARKING
    }

    /**
     * An area on the ground.
     *
     * @param part    what it is
     * @param corners its four corners in order, metres in the frame
     */
    public record Shape(Part part, List<FramePoint> corners) {

        /** Copies the corners. */
        public Shape {
            corners = List.copyOf(corners);
        }
    }

    /**
     * A light of the runway.
     *
     * @param place  where it is
     * @param colour its colour
     */
    public record Lamp(FramePoint place, Colour colour) {
    }

    /** Copies the lists. */
    public PilotGround {
        shapes = List.copyOf(shapes);
        lamps = List.copyOf(lamps);
    }

    /**
     * Returns what lies at a runway end or helipad.
     *
     * @param host the runway end or approach direction
     * @return the ground; a runway without length or width is drawn 1500 m by 30 m
     */
    public static PilotGround of(ApproachHost host) {
        List<Shape> shapes = new ArrayList<>();
        List<Lamp> lamps = new ArrayList<>();
        if (host instanceof RunwayEnd end) {
            Optional<Runway> runway = Projects.runway(end);
            double half = runway.map(Runway::getWidthM).orElse(USUAL_WIDTH_M) / 2;
            double displaced = end.getDisplacedThresholdM() == null ? 0 : end.getDisplacedThresholdM();
            double length = runway.map(Runway::getLengthM).orElse(USUAL_LENGTH_M) - displaced;
            runway(shapes, half, displaced, length);
            aimingPoint(shapes, end, half);
            lamps(lamps, half, displaced, length);
        } else {
            Projects.helipad(host).ifPresent(pad -> helipad(shapes, pad));
        }
        return new PilotGround(shapes, lamps);
    }

    private static void runway(List<Shape> shapes, double half, double displaced, double length) {
        add(shapes, Part.PAVEMENT, -displaced, -half, length, half);
        add(shapes, Part.LINE, -displaced, -half, length, -half + EDGE_LINE_M);
        add(shapes, Part.LINE, -displaced, half - EDGE_LINE_M, length, half);
        add(shapes, Part.LINE, 0, -half, THRESHOLD_LINE_M, half);
        add(shapes, Part.LINE, length - THRESHOLD_LINE_M, -half, length, half);
        for (double from = 60; from < Math.min(length, FARTHEST_MARKED_M) - 60; from += 60) {
            add(shapes, Part.MARKING, from, -0.5, from + 30, 0.5);
        }
        for (int stripe = -4; stripe < 4; stripe++) {
            add(shapes, Part.MARKING, 6, (stripe + 0.2) * half / 5, 36, (stripe + 0.8) * half / 5);
        }
    }

    private static void aimingPoint(List<Shape> shapes, RunwayEnd end, double half) {
        if (end.getAimingPointDistanceM() != null) {
            double aim = end.getAimingPointDistanceM();
            add(shapes, Part.MARKING, aim, half * 0.3, aim + 45, half * 0.7);
            add(shapes, Part.MARKING, aim, -half * 0.7, aim + 45, -half * 0.3);
        }
    }

    /** Adds the lights that a runway of the usual kind has by night: edges every 60 m, threshold and end. */
    private static void lamps(List<Lamp> lamps, double half, double displaced, double length) {
        int pairs = (int) Math.min(FARTHEST_MARKED_M / EDGE_LIGHTS_M, Math.max(1, Math.round((length + displaced) / EDGE_LIGHTS_M)));
        for (int i = 0; i <= pairs; i++) {
            double along = -displaced + (length + displaced) * i / pairs;
            Colour colour = along < 0 ? Colour.RED : Colour.WHITE;
            lamps.add(new Lamp(new FramePoint(along, -half, 0), colour));
            lamps.add(new Lamp(new FramePoint(along, half, 0), colour));
        }
        for (int i = -CROSS_LIGHTS; i <= CROSS_LIGHTS; i++) {
            lamps.add(new Lamp(new FramePoint(length, half * i / CROSS_LIGHTS, 0), Colour.RED));
            lamps.add(new Lamp(new FramePoint(0, half * i / CROSS_LIGHTS, 0), Colour.GREEN));
        }
    }

    private static void helipad(List<Shape> shapes, Helipad pad) {
        if (pad.getFatoLengthM() == null || pad.getFatoWidthM() == null) {
            return;
        }
        double length = pad.getFatoLengthM() / 2;
        double width = pad.getFatoWidthM() / 2;
        add(shapes, Part.PAVEMENT, -length, -width, length, width);
        double line = Math.min(EDGE_LINE_M, width / 4);
        add(shapes, Part.LINE, -length, -width, length, -width + line);
        add(shapes, Part.LINE, -length, width - line, length, width);
        add(shapes, Part.LINE, -length, -width, -length + line, width);
        add(shapes, Part.LINE, length - line, -width, length, width);
        double letter = Math.min(length, width) / 3;
        double stroke = letter / 6;
        add(shapes, Part.MARKING, -letter, -letter * 0.6 - stroke, letter, -letter * 0.6 + stroke);
        add(shapes, Part.MARKING, -letter, letter * 0.6 - stroke, letter, letter * 0.6 + stroke);
        add(shapes, Part.MARKING, -stroke, -letter * 0.6, stroke, letter * 0.6);
    }

    private static void add(List<Shape> shapes, Part part, double along1, double right1, double along2, double right2) {
        shapes.add(new Shape(part, List.of(new FramePoint(along1, right1, 0), new FramePoint(along1, right2, 0),
                new FramePoint(along2, right2, 0), new FramePoint(along2, right1, 0))));
    }
}
