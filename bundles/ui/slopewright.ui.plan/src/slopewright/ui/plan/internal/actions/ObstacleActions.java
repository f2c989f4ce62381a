package slopewright.ui.plan.internal.actions;

import java.util.Optional;

import org.eclipse.jface.window.Window;

import slopewright.edit.AddChild;
import slopewright.edit.EditException;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.commands.HistoryCommand;
import slopewright.ui.document.ElementRevealer;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.obstacle.ObstacleDialog;

/** Adds obstacles that are typed. */
final class ObstacleActions {
    private final PlanContext context;
    private final PlanSelection selection;
    private final ElementRevealer revealer;

    ObstacleActions(PlanContext context, ElementRevealer revealer) {
        this.context = context;
        this.selection = new PlanSelection(context);
        this.revealer = revealer;
    }

    /** Returns the direction of the selected aid, else the first of a helipad: bearings and distances are from the middle of its pad. */
    private Optional<ApproachHost> host() {
        return selection.aid().flatMap(Projects::host).filter(ApproachDirection.class::isInstance)
                .or(() -> Projects.hosts(context.project()).stream().filter(ApproachDirection.class::isInstance).findFirst());
    }

    boolean canAsk() {
        return host().isPresent();
    }

    void ask() {
        try {
            ObstacleDialog dialog = new ObstacleDialog(context.diagram().viewer().getControl().getShell(), host().orElseThrow());
            if (dialog.open() == Window.OK) {
                AddChild edit = dialog.edit();
                context.notice("");
                context.diagram().viewer().getEditDomain().getCommandStack().execute(new HistoryCommand(edit));
                revealer.reveal(edit.child().getId());
            }
        } catch (SitingException e) {
            context.notice(MessageTexts.of(e.reason()));
        } catch (EditException e) {
            context.notice(MessageTexts.reason(e));
        }
    }
}
