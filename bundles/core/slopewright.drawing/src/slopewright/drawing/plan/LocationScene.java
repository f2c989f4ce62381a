package slopewright.drawing.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

import slopewright.drawing.internal.layout.SceneBuilder;
import slopewright.drawing.internal.obstacles.OmittedObstacles;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Frame;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.evaluation.PadArea;
import slopewright.geometry.FramePoint;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.LightUnit;
import slopewright.model.Place;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;

/**
 * Where an aid stands on the aerodrome: all runways, helipads and indicators, true north up, metres east and north of the threshold or
 * hover point of the aid. What has no place is named under it.
 */
public final class LocationScene {

    private static final double USUAL_WIDTH_M = 30;
    private static final double MARGIN = 0.12;
    private static final double LEAST_M = 200;
    private static final int MOST_NAMED = 6;

    private final DrawnAid drawn;
    private final SceneBuilder scene;
    private final double bearing;
    private final List<ScenePoint> reach = new ArrayList<>();
    private final List<Argument> left = new ArrayList<>();

    private LocationScene(DrawnAid drawn, PaperArea area) {
        this.drawn = drawn;
        scene = new SceneBuilder(area);
        bearing = Math.toRadians(drawn.frame().bearingDeg());
    }

    /**
     * Draws the aerodrome round an aid.
     *
     * @param drawn the aid
     * @param area  the area on paper
     * @return the scene
     * @throws IllegalArgumentException where the area has a scale at which the aerodrome does not fit
     */
    public static Scene of(DrawnAid drawn, PaperArea area) {
        return new LocationScene(drawn, area).build();
    }

    private Scene build() {
        Aerodrome aerodrome = drawn.project().getAerodrome();
        aerodrome.getRunways().forEach(this::runway);
        aerodrome.getHelipads().forEach(this::helipad);
        aerodrome.getTaxiwayEdges().forEach(edge -> line(edge.getPoints(), edge.getId()));
        reference(aerodrome);
        Projects.aids(drawn.project()).forEach(this::aid);
        Frame frame = frame();
        new PlanGround(drawn, scene).scaleBar(frame);
        new PlanGround(drawn, scene).north(frame, Math.PI / 2);
        List<String> captions = new ArrayList<>(List.of(drawn.say("drawing.location.caption", drawn.origin(), Words.degrees(
                drawn.frame().bearingDeg()))));
        if (!left.isEmpty()) {
            captions.add(drawn.say("drawing.omitted.no-place", Words.listed(left, MOST_NAMED)));
        }
        List<LegendEntry> legend = List.of(LegendEntry.disc(drawn.say("drawing.location.own"), Style.area(Ink.UNIT, Ink.RED, 0.3)),
                LegendEntry.disc(drawn.say("drawing.location.others"), Style.area(Ink.UNIT, Ink.PAPER, 0.2)),
                LegendEntry.area(drawn.say("drawing.legend.runway"), Style.area(Ink.DIMENSION, Ink.PAVEMENT, 0.2)),
                LegendEntry.line(drawn.say("drawing.legend.pavement-edge"), Style.line(Ink.TAXIWAY, 0.5)));
        return OmittedObstacles.untold(scene.build(drawn.say("drawing.location.title", Words.name(drawn.name())), frame, 1, captions,
                legend), drawn);
    }

    private Frame frame() {
        double minX = reach.stream().mapToDouble(ScenePoint::x).min().orElse(0);
        double maxX = reach.stream().mapToDouble(ScenePoint::x).max().orElse(0);
        double minY = reach.stream().mapToDouble(ScenePoint::y).min().orElse(0);
        double maxY = reach.stream().mapToDouble(ScenePoint::y).max().orElse(0);
        double margin = Math.max(LEAST_M, (maxX - minX + maxY - minY) * MARGIN);
        Frame needed = new Frame(minX - margin, minY - margin, maxX + margin, maxY + margin);
        return scene.paper().isFilled() ? scene.paper().plan(needed) : needed.atMost(2.9).atLeast(1.8);
    }

    /** Turns a point of the frame of the aid so that true north is up. */
    private ScenePoint turned(FramePoint point) {
        ScenePoint turned = new ScenePoint(point.alongM() * Math.sin(bearing) + point.rightM() * Math.cos(bearing),
                point.alongM() * Math.cos(bearing) - point.rightM() * Math.sin(bearing));
        reach.add(turned);
        return turned;
    }

    private ScenePoint at(Place place) {
        return turned(drawn.frame().toFrame(place, drawn.frame().originElevationM()));
    }

    private ScenePoint at(SiteFrame frame, double alongM, double rightM) {
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        frame.fromFrame(new FramePoint(alongM, rightM, 0), place);
        return at(place);
    }

    private void area(SiteFrame frame, String id, double along1, double along2, double half) {
        area(frame, id, List.of(new FramePoint(along1, -half, 0), new FramePoint(along1, half, 0), new FramePoint(along2, half, 0),
                new FramePoint(along2, -half, 0)));
    }

    private void area(SiteFrame frame, String id, List<FramePoint> corners) {
        double[] xy = new double[2 * corners.size()];
        for (int i = 0; i < corners.size(); i++) {
            ScenePoint corner = at(frame, corners.get(i).alongM(), corners.get(i).rightM());
            xy[2 * i] = corner.x();
            xy[2 * i + 1] = corner.y();
        }
        scene.area(Style.area(Ink.DIMENSION, Ink.PAVEMENT, 0.2), id, xy);
    }

    /** A runway from the first of its ends that has a place, as long as it is; without a length, to its other threshold. */
    private void runway(Runway runway) {
        Optional<SiteFrame> frame = runway.getEnds().stream().flatMap(end -> frame(end).stream()).findFirst();
        RunwayEnd first = runway.getEnds().stream().filter(end -> frame(end).isPresent()).findFirst().orElse(null);
        if (frame.isEmpty() || runway.getLengthM() == null) {
            left.add(ElementNames.of(runway));
            return;
        }
        double displaced = first.getDisplacedThresholdM() == null ? 0 : first.getDisplacedThresholdM();
        area(frame.get(), runway.getId(), -displaced, runway.getLengthM() - displaced, (runway.getWidthM() == null ? USUAL_WIDTH_M
                : runway.getWidthM()) / 2);
        for (RunwayEnd end : runway.getEnds()) {
            frame(end).ifPresent(own -> {
                ScenePoint threshold = at(own, 0, 0);
                scene.callout(threshold.x(), threshold.y(), String.valueOf(end.getDesignator()), PlanGround.LABEL_MM,
                        90 - own.bearingDeg() + 180, Ink.TEXT, end.getId());
            });
        }
    }

    private void helipad(Helipad pad) {
        Optional<SiteFrame> frame = pad.getDirections().stream().flatMap(direction -> frame(direction).stream()).findFirst();
        if (frame.isEmpty()) {
            left.add(ElementNames.of(pad));
            return;
        }
        ScenePoint middle = at(frame.get(), 0, 0);
        if (pad.getFatoLengthM() != null && pad.getFatoWidthM() != null) {
            area(frame.get(), pad.getId(), PadArea.corners(pad, pad.getFatoLengthM(), pad.getFatoWidthM(), frame.get().bearingDeg()));
        }
        scene.label(middle.x(), middle.y(), "H", Anchor.MIDDLE, 2.2, -1.1, Ink.TEXT, pad.getId());
    }

    private void line(List<Place> places, String id) {
        try {
            double[] xy = places.stream().map(this::at).flatMapToDouble(point -> DoubleStream.of(point.x(), point.y()))
                    .toArray();
            if (xy.length >= 4) {
                scene.path(Style.line(Ink.TAXIWAY, 0.5), id, xy);
            }
        } catch (SitingException e) {
            left.add(Words.name(id));
        }
    }

    private void reference(Aerodrome aerodrome) {
        if (aerodrome.getLatitudeDeg() == null || aerodrome.getLongitudeDeg() == null || drawn.frame().isPlane()) {
            return;
        }
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        place.setLatitudeDeg(aerodrome.getLatitudeDeg());
        place.setLongitudeDeg(aerodrome.getLongitudeDeg());
        ScenePoint at = at(place);
        scene.disc(at.x(), at.y(), 0.7, Style.area(Ink.TEXT, Ink.PAPER, 0.3), aerodrome.getId());
        scene.callout(at.x(), at.y(), drawn.say("drawing.location.reference"), PlanGround.LABEL_MM, Ink.TEXT, aerodrome.getId());
    }

    private void aid(ApproachAid aid) {
        Optional<SiteFrame> frame = Projects.host(aid).flatMap(this::frame);
        List<LightUnit> units = aid.getUnits().stream().filter(unit -> unit.getAlongM() != null && unit.getRightM() != null).toList();
        if (frame.isEmpty() || units.isEmpty()) {
            left.add(ElementNames.of(aid));
            return;
        }
        boolean own = aid == drawn.aid();
        List<ScenePoint> places = units.stream().map(unit -> at(frame.get(), unit.getAlongM(), unit.getRightM())).toList();
        for (int i = 0; i < places.size(); i++) {
            scene.disc(places.get(i).x(), places.get(i).y(), own ? 0.9 : 0.6, own ? Style.area(Ink.UNIT, Ink.RED, 0.3)
                    : Style.area(Ink.UNIT, Ink.PAPER, 0.2), units.get(i).getId());
        }
        Argument name = Message.of("drawing.location.aid", ElementNames.of(aid), ElementNames.of(Projects.host(aid).orElseThrow()));
        scene.callout(places.get(0).x(), places.get(0).y(), drawn.language().write(name), PlanGround.LABEL_MM, own ? Ink.RED : Ink.TEXT,
                aid.getId());
    }

    private Optional<SiteFrame> frame(ApproachHost host) {
        try {
            return Optional.of(SiteFrame.of(host));
        } catch (SitingException e) {
            // what has no place is named under the drawing
            return Optional.empty();
        }
    }
}
