package slopewright.report.internal.deliverables;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import slopewright.drawing.View;
import slopewright.drawing.pilot.Daylight;
import slopewright.drawing.pilot.PilotScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.evaluation.AidEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.report.Drawings;
import slopewright.report.ReportException;
import slopewright.report.handover.Deliverable;
import slopewright.report.handover.FileWriter;
import slopewright.report.handover.HandoverOptions;
import slopewright.report.handover.HandoverSource;

/** The drawings of an aid, one file a view and form. */
public final class DrawingDeliverable implements Deliverable {

    private static final double EYE_BEFORE_M = 1500;
    private static final List<Drawings.Format> FORMS = List.of(Drawings.Format.PDF, Drawings.Format.DXF, Drawings.Format.SVG);
    private static final Set<View> USUAL = Set.of(View.PLAN, View.SECTION, View.SURFACE);

    @Override
    public int order() {
        return 60;
    }

    @Override
    public List<Offer> about(ApproachAid aid) {
        return Stream.of(View.values()).filter(view -> view.fits(aid))
                .flatMap(view -> FORMS.stream().map(form -> offer(aid.getId(), view, form))).toList();
    }

    private static Offer offer(String aidId, View view, Drawings.Format form) {
        return new Offer("drawing-" + view.key(), Message.of("deliverable.drawing", Words.term("report.view." + view.key())), view.key(),
                form.name().toLowerCase(Locale.ROOT), form == Drawings.Format.PDF && USUAL.contains(view), writer(aidId, view, form),
                Optional.of(writer(aidId, view, Drawings.Format.PNG)));
    }

    private static FileWriter writer(String aidId, View view, Drawings.Format form) {
        return (source, options) -> drawing(source, source.aid(aidId), view, options, form);
    }

    private static byte[] drawing(HandoverSource source, AidEvaluation aid, View view, HandoverOptions options, Drawings.Format form)
            throws ReportException {
        DrawnAid drawn = DrawnAid.of(aid, options.renderer());
        return Drawings.write(new Drawings.Subject(drawn, view, PilotScene.eyeOnSlope(drawn, EYE_BEFORE_M), Daylight.values()[0]),
                new Drawings.Layout(options.sheet(), 0, source.madeFrom(aid), options.date().toString(), options.language(),
                        Optional.of(source.checked())), form);
    }
}
