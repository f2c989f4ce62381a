package slopewright.report.internal.deliverables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.drawing.View;
import slopewright.drawing.circuit.CircuitScene;
import slopewright.drawing.equipment.LightScene;
import slopewright.drawing.pilot.Daylight;
import slopewright.drawing.pilot.PilotScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.signal.SignalScene;
import slopewright.evaluation.AidEvaluation;
import slopewright.messages.Reasoned;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.report.Drawings;
import slopewright.report.ReportException;
import slopewright.report.handover.Deliverable;
import slopewright.report.handover.HandoverOptions;
import slopewright.report.handover.HandoverSource;
import slopewright.siting.Siting;

/** All drawings of all aids as one document with a register; aids that cannot be laid out are in the report alone. */
public final class DrawingSetDeliverable implements Deliverable {

    private static final double RUNWAY_VIEW_M = 1500;
    private static final double HELIPAD_VIEW_M = 300;

    @Override
    public int order() {
        return 55;
    }

    @Override
    public List<Offer> about(Project project) {
        return Projects.aids(project).isEmpty() ? List.of() : List.of(new Offer("drawing-set", "pdf", true,
                DrawingSetDeliverable::set));
    }

    private static byte[] set(HandoverSource source, HandoverOptions options) throws ReportException {
        List<Drawings.Subject> subjects = new ArrayList<>();
        for (AidEvaluation aid : source.evaluation().aids()) {
            if (aid.siting().value().isPresent() && aid.frame().value().isPresent()) {
                subjects(aid, DrawnAid.of(aid, options.renderer()), subjects);
            }
        }
        try {
            return Drawings.set(subjects, new Drawings.Layout(options.sheet(), 0, source.madeFrom(), options.date().toString(),
                    options.language(), Optional.of(source.checked())));
        } catch (IllegalArgumentException e) {
            throw new ReportException(Reasoned.of(e), e);
        }
    }

    private static void subjects(AidEvaluation aid, DrawnAid drawn, List<Drawings.Subject> subjects) {
        Siting siting = aid.siting().value().orElseThrow();
        double before = aid.host() instanceof RunwayEnd ? RUNWAY_VIEW_M : HELIPAD_VIEW_M;
        for (View view : View.values()) {
            boolean shown = switch (view) {
                case SURFACE -> siting.surface().isPresent();
                case SIGNALS -> SignalScene.fits(siting);
                case DIRECTIONS -> false;
                case LIGHT -> view.fits(aid.aid()) && LightScene.fits(drawn);
                case CIRCUIT -> CircuitScene.feeding(aid.aid()).filter(circuit -> circuit.getAids().get(0) == aid.aid()).isPresent();
                default -> view.fits(aid.aid());
            };
            if (shown) {
                subjects.add(new Drawings.Subject(drawn, view, PilotScene.eyeOnSlope(drawn, before), Daylight.values()[0]));
            }
        }
    }
}
