package slopewright.ui.plan.internal.actions;

import java.util.Optional;
import java.util.function.BooleanSupplier;

import org.eclipse.jface.action.Action;

/** What one command does in one plan. Whether it can be carried out, and whether it is on, is asked when it is shown. */
final class PlanAction extends Action {

    private final PlanCommand command;
    private final Runnable work;
    private final BooleanSupplier enabled;
    private final Optional<BooleanSupplier> checked;

    private PlanAction(PlanCommand command, Runnable work, BooleanSupplier enabled, Optional<BooleanSupplier> checked) {
        super(command.text(), checked.isPresent() ? AS_CHECK_BOX : AS_PUSH_BUTTON);
        this.command = command;
        this.work = work;
        this.enabled = enabled;
        this.checked = checked;
        setId(command.id());
        setActionDefinitionId(command.id());
    }

    /** Makes an action that can be carried out under a condition. */
    static PlanAction of(PlanCommand command, Runnable work, BooleanSupplier enabled) {
        return new PlanAction(command, work, enabled, Optional.empty());
    }

    /** Makes an action that switches something on and off. */
    static PlanAction toggle(PlanCommand command, Runnable work, BooleanSupplier checked) {
        return new PlanAction(command, work, () -> true, Optional.of(checked));
    }

    /** Returns its command. */
    PlanCommand command() {
        return command;
    }

    @Override
    public boolean isEnabled() {
        return enabled.getAsBoolean();
    }

    @Override
    public boolean isChecked() {
        return checked.filter(BooleanSupplier::getAsBoolean).isPresent();
    }

    @Override
    public void run() {
        if (isEnabled()) {
            work.run();
        }
    }
}
