package slopewright.ui.plan.internal.obstacle;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntConsumer;
import java.util.stream.Stream;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import slopewright.edit.AddChild;
import slopewright.edit.AddObstacle;
import slopewright.model.ApproachHost;
import slopewright.model.Obstacle;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.ui.MessageTexts;
import slopewright.ui.plan.internal.Messages;

/** Asks for an obstacle that was measured from a helipad, or whose coordinates are known. */
public final class ObstacleDialog extends TitleAreaDialog {
    private static final int TEXT_WIDTH = 130;

    private final ApproachHost host;
    private final ObstacleEntry entry;
    private final Map<ObstacleEntry.Number, List<Control>> rows = new EnumMap<>(ObstacleEntry.Number.class);
    private Combo shape;
    private Button magnetic;
    private Composite area;
    private Obstacle made;

    /**
     * Makes the dialog.
     *
     * @param shell the window
     * @param host  an approach direction of the helipad from which was measured
     */
    public ObstacleDialog(Shell shell, ApproachHost host) {
        super(shell);
        this.host = host;
        entry = new ObstacleEntry(host);
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    /** Returns the edit that adds the obstacle that was typed. */
    public AddChild edit() {
        return AddObstacle.of(Projects.project(host).orElseThrow().getAerodrome(), made);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        getShell().setText(Messages.get("obstacle.title"));
        setTitle(Messages.get("obstacle.title"));
        setMessage(Messages.get("obstacle.hint", Projects.helipad(host).map(MessageTexts::label).orElse(MessageTexts.label(host))));
        area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(4).spacing(8, 6).applyTo(area);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        new Label(area, SWT.NONE).setText(Messages.get("obstacle.name"));
        Text name = new Text(area, SWT.BORDER);
        GridDataFactory.fillDefaults().hint(TEXT_WIDTH, SWT.DEFAULT).span(3, 1).grab(true, false).applyTo(name);
        name.addListener(SWT.Modify, event -> {
            entry.setName(name.getText());
            review();
        });
        name.setData("question", "name");
        combo("obstacle.way", Stream.of(ObstacleEntry.Way.values()).map(way -> Messages.get("obstacle.way." + key(way))).toList(),
                ObstacleEntry.Way.HEIGHT.ordinal(), index -> entry.choose(ObstacleEntry.Way.values()[index]));
        shape = combo("obstacle.shape", Stream.of(ObstacleEntry.Shape.values()).map(kind -> Messages.get("obstacle.shape." + key(kind)))
                .toList(), 0, index -> entry.choose(ObstacleEntry.Shape.values()[index]));
        magnetic = new Button(area, SWT.CHECK);
        magnetic.setText(Messages.get("obstacle.magnetic"));
        magnetic.addListener(SWT.Selection, event -> {
            entry.setMagnetic(magnetic.getSelection());
            review();
        });
        GridDataFactory.fillDefaults().span(4, 1).applyTo(magnetic);
        Stream.of(ObstacleEntry.Number.values()).forEach(this::row);
        arrange();
        return area;
    }

    private static String key(Enum<?> literal) {
        return literal.name().toLowerCase(Locale.ROOT);
    }

    private Combo combo(String key, List<String> choices, int first, IntConsumer chosen) {
        new Label(area, SWT.NONE).setText(Messages.get(key));
        Combo combo = new Combo(area, SWT.READ_ONLY | SWT.DROP_DOWN);
        combo.setItems(choices.toArray(String[]::new));
        combo.select(first);
        combo.setData("question", key);
        combo.addListener(SWT.Selection, event -> {
            chosen.accept(combo.getSelectionIndex());
            arrange();
            review();
        });
        return combo;
    }

    private void row(ObstacleEntry.Number number) {
        Label label = new Label(area, SWT.NONE);
        label.setText(entry.label(number));
        Text text = new Text(area, SWT.BORDER);
        text.setText(entry.text(number));
        text.setData("number", number.name());
        text.addListener(SWT.Modify, event -> {
            entry.type(number, text.getText());
            review();
        });
        GridDataFactory.fillDefaults().hint(TEXT_WIDTH, SWT.DEFAULT).applyTo(text);
        GridDataFactory.swtDefaults().applyTo(label);
        rows.put(number, List.of(label, text));
    }

    /** Shows the numbers that are asked for. */
    private void arrange() {
        rows.forEach((number, controls) -> controls.forEach(control -> {
            control.setVisible(entry.isAsked(number));
            ((GridData) control.getLayoutData()).exclude = !entry.isAsked(number);
        }));
        boolean sighted = entry.isAsked(ObstacleEntry.Number.BEARING);
        shape.setEnabled(sighted);
        shape.select(entry.shape().ordinal());
        magnetic.setEnabled(sighted);
        area.layout(true);
        if (getShell() != null && area.getShell().isVisible()) {
            getShell().pack();
        }
    }

    private void review() {
        String fault = null;
        try {
            made = entry.obstacle(LocalDate.now());
        } catch (SitingException e) {
            fault = MessageTexts.of(e.reason());
        } catch (IllegalArgumentException e) {
            fault = e.getMessage();
        }
        setErrorMessage(fault);
        Button ok = getButton(IDialogConstants.OK_ID);
        if (ok != null) {
            ok.setEnabled(fault == null);
        }
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        super.createButtonsForButtonBar(parent);
        getButton(IDialogConstants.OK_ID).setEnabled(false);
    }
}
