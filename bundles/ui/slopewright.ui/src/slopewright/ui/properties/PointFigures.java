package slopewright.ui.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.Place;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;
import slopewright.siting.site.SiteFrame;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.PickedPoint;
import slopewright.ui.document.ProjectDocument;

/** What is known of the point of a survey block that was picked: its name, its place, its elevation, and how it stands at each aid. */
final class PointFigures {

    private final List<AidFigures.Figure> figures = new ArrayList<>();

    private PointFigures() {
    }

    static List<AidFigures.Figure> of(SurveyBlock block) {
        Optional<ProjectDocument> document = ProjectDocument.of(block);
        Optional<PickedPoint> picked = document.flatMap(opened -> opened.viewState().picked())
                .filter(point -> point.blockId().equals(block.getId()));
        PointFigures all = new PointFigures();
        picked.ifPresent(point -> document.get().evaluation().aids().forEach(aid -> all.add(aid, block, point.index())));
        return all.figures;
    }

    private void add(AidEvaluation aid, SurveyBlock block, int index) {
        Optional<Surroundings.Block> found = aid.surroundings().value().stream().flatMap(around -> around.blocks().stream())
                .filter(each -> each.block().getId().equals(block.getId()) && index < each.points().count()).findFirst();
        Optional<SiteFrame> frame = aid.frame().value();
        if (found.isEmpty() || frame.isEmpty()) {
            return;
        }
        FramePoint point = found.get().points().point(index);
        if (figures.isEmpty()) {
            add("point.name", found.get().points().id(index), "point.name.why");
            add("point.place", place(frame.get(), point), "point.place.why");
            add("point.elevation", length(frame.get().originElevationM() + point.heightM()), "point.elevation.why");
        }
        String where = PropertyTexts.get(point.rightM() < 0 ? "point.left" : "point.right", length(-point.alongM()), length(Math.abs(point
                .rightM())));
        aid.obstacles().value().ifPresent(comparison -> {
            ProtectionSurface surface = comparison.surface();
            Optional<Penetration> hit = found.get().points().shape(index).compare(surface);
            String margin = hit.map(stands -> OutcomeTexts.signed(OptionalDouble.of(-stands.excessM()), "m"))
                    .orElse(PropertyTexts.get("point.outside"));
            figures.add(new AidFigures.Figure(PropertyTexts.get("point.margin", MessageTexts.path(aid.aid())), margin + ", " + where,
                    PropertyTexts.get("point.margin.why")));
        });
    }

    private static String place(SiteFrame frame, FramePoint point) {
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        frame.fromFrame(point, place);
        return place.getLatitudeDeg() == null ? PropertyTexts.get("point.grid", place.getEastM(), place.getNorthM())
                : PropertyTexts.get("point.degrees", place.getLatitudeDeg(), place.getLongitudeDeg());
    }

    private void add(String name, String text, String why) {
        figures.add(new AidFigures.Figure(PropertyTexts.get(name), text, PropertyTexts.get(why)));
    }

    private static String length(double valueM) {
        return MessageTexts.length(valueM);
    }
}
