package slopewright.ui.plan.internal.actions;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

import slopewright.edit.AlignUnits;
import slopewright.edit.CopyAid;
import slopewright.edit.DistributeUnits;
import slopewright.edit.MirrorAid;
import slopewright.edit.RecordedEdit;
import slopewright.edit.ResolveAid;
import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.standards.RuleSet;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.commands.HistoryCommand;
import slopewright.ui.document.ElementRevealer;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.properties.TerrainOffer;

/** Commands that arrange units and aids by edits of the project. */
final class ArrangeActions {

    private static final int LEAST_TO_SPACE = 3;

    private final PlanContext context;
    private final PlanSelection selection;
    private final ElementRevealer revealer;

    ArrangeActions(PlanContext context, ElementRevealer revealer) {
        this.context = context;
        this.selection = new PlanSelection(context);
        this.revealer = revealer;
    }

    List<PlanAction> all() {
        return List.of(
                PlanAction.of(PlanCommand.LAY_OUT_AGAIN, () -> onAid(aid -> ResolveAid.of(aid, rules(aid))), this::hasAid),
                PlanAction.of(PlanCommand.TAKE_GROUND, this::takeGround, () -> groundAid().isPresent()),
                PlanAction.of(PlanCommand.ALIGN_BAR, () -> align(AlignUnits::onBar), () -> selection.units().size() > 1),
                PlanAction.of(PlanCommand.ALIGN_OFFSET, () -> align(AlignUnits::atOffset), () -> selection.units().size() > 1),
                PlanAction.of(PlanCommand.DISTRIBUTE, () -> perform(DistributeUnits.across(selection.units())), this::canSpace),
                PlanAction.of(PlanCommand.COPY_ANEW, () -> copy(true), this::hasOtherEnd),
                PlanAction.of(PlanCommand.COPY_SAME, () -> copy(false), this::hasOtherEnd),
                PlanAction.of(PlanCommand.MIRROR, () -> onAid(MirrorAid::of), this::canMirror));
    }

    private RuleSet rules(ApproachAid aid) {
        return context.evaluation(aid).orThrow().rules();
    }

    private boolean hasAid() {
        return selection.aid().isPresent();
    }

    /** The aid that is selected, or the only one of the runway end that is. */
    private Optional<ApproachAid> groundAid() {
        List<Identified> elements = selection.elements();
        return elements.size() == 1 ? TerrainOffer.aid(elements.get(0)) : selection.aid().flatMap(TerrainOffer::aid);
    }

    private void takeGround() {
        context.notice("");
        groundAid().ifPresent(aid -> TerrainOffer.ask(context.diagram().viewer().getControl().getShell(), context.document(), aid));
    }

    private boolean canSpace() {
        List<LightUnit> units = selection.units();
        long left = units.stream().filter(unit -> unit.getRightM() != null && unit.getRightM() < 0).count();
        return left >= LEAST_TO_SPACE || units.size() - left >= LEAST_TO_SPACE;
    }

    private boolean hasOtherEnd() {
        return selection.aid().flatMap(CopyAid::otherEnd).isPresent();
    }

    private boolean canMirror() {
        return selection.aid().filter(aid -> aid.getSide() != AidSide.BOTH && !aid.getUnits().isEmpty()).isPresent();
    }

    private void align(BiFunction<List<LightUnit>, LightUnit, RecordedEdit> edit) {
        selection.lead().ifPresent(lead -> perform(edit.apply(selection.units(), lead)));
    }

    private void onAid(Function<ApproachAid, RecordedEdit> edit) {
        try {
            selection.aid().ifPresent(aid -> perform(edit.apply(aid)));
        } catch (SitingException | IllegalArgumentException e) {
            context.notice(MessageTexts.reason(e));
        }
    }

    private void copy(boolean anew) {
        try {
            Optional<ApproachAid> aid = selection.aid();
            Optional<CopyAid> edit = aid.flatMap(CopyAid::otherEnd)
                    .map(end -> anew ? CopyAid.solved(aid.get(), end, rules(aid.get())) : CopyAid.sameGeometry(aid.get(), end));
            edit.ifPresent(this::perform);
            edit.flatMap(CopyAid::made).filter(made -> Projects.project(made).isPresent()).ifPresent(made -> revealer.reveal(made.getId()));
        } catch (SitingException | IllegalArgumentException e) {
            context.notice(MessageTexts.reason(e));
        }
    }

    private void perform(RecordedEdit edit) {
        context.notice("");
        context.diagram().viewer().getEditDomain().getCommandStack().execute(new HistoryCommand(edit));
    }
}
