package slopewright.ui.plan.internal.actions;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import org.eclipse.jface.action.IAction;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.handlers.IHandlerService;

import slopewright.ui.document.ElementRevealer;
import slopewright.ui.plan.internal.PilotEye;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanNavigator;
import slopewright.ui.plan.internal.image.ImageScaling;
import slopewright.ui.plan.internal.survey.SurveyImports;

/** The commands of one plan, connected with menus and keys while it is the active editor. */
public final class PlanCommands {

    private static final String CONTEXT = "slopewright.ui.plan.context";

    private final Map<PlanCommand, PlanAction> actions = new EnumMap<>(PlanCommand.class);

    /**
     * Makes the commands of a plan.
     *
     * @param context   the context
     * @param navigator shows parts of the plan
     * @param eye       the pilot's eye
     * @param scaling   lays pictures under the plan
     * @param revealer  selects elements
     * @param clipboard copies elements
     * @param surveys   imports survey files
     */
    public PlanCommands(PlanContext context, PlanNavigator navigator, PilotEye eye, ImageScaling scaling, ElementRevealer revealer,
            PlanClipboard clipboard, SurveyImports surveys) {
        List<PlanAction> all = new ArrayList<>(new ViewActions(context, navigator, eye).all());
        all.addAll(new ArrangeActions(context, revealer).all());
        ObstacleActions obstacles = new ObstacleActions(context, revealer);
        all.add(PlanAction.of(PlanCommand.ADD_OBSTACLE, obstacles::ask, obstacles::canAsk));
        all.add(PlanAction.of(PlanCommand.DUPLICATE, clipboard::duplicate, clipboard::canCopy));
        all.add(PlanAction.of(PlanCommand.PALETTE, () -> context.diagram().viewer().getEditDomain().getPaletteViewer().getControl()
                .setFocus(), () -> true));
        all.add(PlanAction.of(PlanCommand.IMPORT, surveys::choose, () -> true));
        all.add(PlanAction.of(PlanCommand.ADD_IMAGE, scaling::choose, () -> true));
        all.add(PlanAction.of(PlanCommand.SCALE_IMAGE, scaling::start, scaling::hasImage));
        all.add(PlanAction.of(PlanCommand.REMOVE_IMAGE, scaling::remove, scaling::hasImage));
        all.forEach(action -> actions.put(action.command(), action));
    }

    /** Returns the actions of the common menus and keys that go from element to element. */
    public static List<IAction> round(PlanContext context, PlanNavigator navigator) {
        ElementRound round = new ElementRound(context, navigator);
        return List.of(CommonAction.of(ActionFactory.NEXT, round::next), CommonAction.of(ActionFactory.PREVIOUS, round::previous));
    }

    /** Connects them with menus and keys while the editor is active. */
    public void connect(IEditorSite site) {
        IHandlerService handlers = site.getService(IHandlerService.class);
        actions.forEach((command, action) -> handlers.activateHandler(command.id(), new PlanHandler(action)));
        site.getService(IContextService.class).activateContext(CONTEXT);
    }

    /** Returns the action of a command. */
    public IAction get(PlanCommand command) {
        return actions.get(command);
    }

    /** Returns the action of a command where it can be carried out now. */
    public boolean canRun(PlanCommand command) {
        return actions.get(command).isEnabled();
    }
}
