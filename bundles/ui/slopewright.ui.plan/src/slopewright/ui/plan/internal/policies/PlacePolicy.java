package slopewright.ui.plan.internal.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.AbstractEditPolicy;
import org.eclipse.gef.requests.CreateRequest;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.edit.AddAid;
import slopewright.edit.AddObstacle;
import slopewright.edit.RecordedEdit;
import slopewright.evaluation.Attempt;
import slopewright.geometry.FramePoint;
import slopewright.model.ApproachHost;
import slopewright.model.Runway;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.UnitPlan;
import slopewright.siting.site.PlanAxis;
import slopewright.siting.site.PlanPoint;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.commands.HistoryCommand;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.Placing;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.figures.AidMarks;
import slopewright.ui.plan.internal.figures.Marks;
import slopewright.ui.plan.internal.figures.UnitMarks;
import slopewright.ui.plan.internal.palette.Placed;
import slopewright.ui.plan.internal.places.PlanPlaces;
import slopewright.ui.plan.internal.tools.PlaceRound;
import slopewright.ui.trial.TrialVerdict;

/** Places what the palette offers. Before the click it shows where the units would stand and what they would give, or why they can't. */
public final class PlacePolicy extends AbstractEditPolicy {

    private static final double OBSTACLE_HEIGHT_M = 10;

    private final PlanContext context;
    private final Placing placing;
    private final MoveFeedback feedback;
    private final TrialVerdict verdict;
    private Optional<CreateRequest> shown = Optional.empty();

    /** Makes the policy of a plan. */
    public PlacePolicy(PlanContext context) {
        this.context = context;
        this.placing = new Placing(context);
        this.feedback = new MoveFeedback(context.diagram());
        this.verdict = new TrialVerdict(context.document(), () -> shown.ifPresent(this::showTargetFeedback));
    }

    @Override
    public boolean understandsRequest(Request request) {
        return RequestConstants.REQ_CREATE.equals(request.getType());
    }

    @Override
    public EditPart getTargetEditPart(Request request) {
        return understandsRequest(request) ? getHost() : null;
    }

    /** Where the keys have led, else where the mouse is. */
    private PlanPoint place(CreateRequest request) {
        Point at = request.getLocation();
        WorldView view = context.diagram().view();
        return PlaceRound.place(request).orElseGet(() -> new PlanPoint(view.worldX(at.x), view.worldY(at.y)));
    }

    @Override
    public Command getCommand(Request request) {
        if (!(request instanceof CreateRequest create) || create.getLocation() == null) {
            return null;
        }
        return create.getNewObject() instanceof Placed.Aid aid ? new HistoryCommand(addAid(aid.key(), place(create)))
                : new HistoryCommand(addObstacle(place(create)));
    }

    private RecordedEdit addAid(String key, PlanPoint place) {
        String label = "Add " + Families.get(key).name();
        try {
            Optional<Placing.Proposal> proposal = placing.propose(key, place);
            if (proposal.isEmpty()) {
                return new Refusal(label, noHost(key));
            }
            ApproachHost host = proposal.get().host();
            return proposal.get().problem().isPresent() ? new Refusal(label + " at " + MessageTexts.label(host),
                    proposal.get().problem().get())
                    : AddAid.solve(host, key, context.rules(), proposal.get().side());
        } catch (SitingException | IllegalArgumentException e) {
            return new Refusal(label, MessageTexts.reason(e));
        }
    }

    private static String noHost(String key) {
        boolean runways = Families.get(key).atRunways();
        boolean helipads = Families.get(key).atHelipads();
        String where = runways && helipads ? "place.no-host" : runways ? "place.no-runway" : "place.no-helipad";
        return Messages.get(where, Families.get(key).name());
    }

    private RecordedEdit addObstacle(PlanPoint place) {
        Optional<ApproachHost> host = placing.nearest(place, any -> true);
        if (host.isEmpty()) {
            return new Refusal("Add obstacle", Messages.get("place.obstacle-no-host"));
        }
        FramePoint top = context.axis(host.get()).orElseThrow().toFrame(place, OBSTACLE_HEIGHT_M);
        int number = context.project().getAerodrome().getObstacles().size() + 1;
        try {
            return AddObstacle.at(host.get(), top, Messages.get("place.obstacle-name", number));
        } catch (SitingException e) {
            return new Refusal("Add obstacle", MessageTexts.reason(e));
        }
    }

    @Override
    public void showTargetFeedback(Request request) {
        if (!(request instanceof CreateRequest create) || create.getLocation() == null) {
            return;
        }
        shown = Optional.of(create);
        PlanPoint place = place(create);
        ScenePoint at = PlanPlaces.point(place);
        if (create.getNewObject() instanceof Placed.Aid aid) {
            showAid(aid.key(), place, at);
        } else {
            Marks marks = new Marks("").disc(at, 1.2, Style.line(Ink.WHEELS, 0.4));
            String how = PlaceRound.place(create).isPresent() ? "place.keys-obstacle" : "place.obstacle";
            feedback.show(marks.list(), List.of(Line.of(Messages.get(how))), at);
        }
    }

    private void showAid(String key, PlanPoint place, ScenePoint at) {
        try {
            Optional<Placing.Proposal> proposal = placing.propose(key, place);
            if (proposal.isEmpty()) {
                feedback.show(List.of(), List.of(Line.of(noHost(key), false)), at);
            } else {
                show(proposal.get(), key, at);
            }
        } catch (IllegalArgumentException e) {
            feedback.show(List.of(), List.of(Line.of(MessageTexts.reason(e), false)), at);
        }
    }

    private void show(Placing.Proposal proposal, String key, ScenePoint at) {
        PlanAxis axis = context.axis(proposal.host()).orElseThrow();
        List<Line> lines = new ArrayList<>();
        String side = Messages.get("side." + proposal.side().key());
        lines.add(Line.of(MessageTexts.label(proposal.host()) + ", " + side));
        Marks marks = new Marks("");
        double half = Projects.runway(proposal.host()).map(Runway::getWidthM).orElse(20.0) / 2;
        marks.stroke(Style.line(Ink.WHEELS, 0.7), axis, 0, -half, 0, half);
        proposal.figures().ifPresent(figures -> {
            lines.addAll(Readings.of(Attempt.success(figures)));
            figures.siting().value().ifPresent(siting -> ghosts(marks, axis, siting));
        });
        if (proposal.problem().isEmpty()) {
            String hostId = proposal.host().getId();
            verdict.ask(List.of(hostId, key, proposal.side()), lines.get(0).text(), project -> AddAid.solve(
                    (ApproachHost) Ids.find(project, hostId).orElseThrow(), key, context.rules(), proposal.side()));
            lines.addAll(Readings.of(verdict));
        }
        if (shown.flatMap(PlaceRound::place).isPresent()) {
            lines.add(Line.of(Messages.get("place.keys-aid")));
        }
        proposal.problem().ifPresent(problem -> lines.add(Line.of(Messages.get("place.refused", problem), false)));
        feedback.show(marks.list(), lines, at);
    }

    private void ghosts(Marks marks, PlanAxis axis, Siting siting) {
        siting.surface().ifPresent(surface -> AidMarks.surface(axis, surface.geometry(), "").forEach(marks::add));
        for (UnitPlan unit : siting.units()) {
            UnitMarks.ghost(marks, context.diagram().view(), axis, unit.place().alongM(), unit.place().rightM(), Ink.WHEELS);
        }
    }

    private void end() {
        verdict.end();
        shown = Optional.empty();
    }

    @Override
    public void eraseTargetFeedback(Request request) {
        feedback.erase();
        end();
    }

    @Override
    public void deactivate() {
        feedback.erase();
        end();
        super.deactivate();
    }
}
