package slopewright.ui.properties;

import java.util.List;
import java.util.OptionalDouble;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

import slopewright.checks.compare.ProjectDifference.OutcomeChange;
import slopewright.evaluation.terrain.TakenGround;
import slopewright.evaluation.terrain.TakenGround.TakenPlace;
import slopewright.ui.AccessibleName;
import slopewright.ui.theme.TypeScale;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** Shows the levels that models of the terrain have beside those that are entered, and what the check would say differently. */
final class TerrainDialog extends MessageDialog {

    private static final String[] COLUMNS = {"along", "now", "taken", "difference", "accuracy", "model"};
    private static final int[] WIDTHS = {150, 110, 110, 110, 120, 180};
    private static final int LEVELS_HEIGHT = 180;
    private static final int VERDICTS_HEIGHT = 110;

    private final TakenGround ground;
    private final List<OutcomeChange> changes;

    TerrainDialog(Shell shell, String title, String question, TakenGround ground, List<OutcomeChange> changes) {
        super(shell, title, null, question, QUESTION, 1, PropertyTexts.get("terrain.take"), PropertyTexts.get("terrain.leave"));
        this.ground = ground;
        this.changes = changes;
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    @Override
    protected Control createCustomArea(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(area);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, TypeScale.px(LEVELS_HEIGHT)).applyTo(levels(area));
        new Label(area, SWT.WRAP).setText(VerdictChanges.count(changes));
        Text verdicts = new Text(area, SWT.BORDER | SWT.MULTI | SWT.READ_ONLY | SWT.V_SCROLL | SWT.H_SCROLL);
        AccessibleName.give(verdicts, PropertyTexts.get("terrain.verdicts"));
        verdicts.setText(VerdictChanges.lines(changes));
        GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, TypeScale.px(VERDICTS_HEIGHT)).applyTo(verdicts);
        return area;
    }

    private Table levels(Composite parent) {
        Table table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setHeaderVisible(true);
        AccessibleName.give(table, PropertyTexts.get("terrain.levels"));
        for (int i = 0; i < COLUMNS.length; i++) {
            TableColumn column = new TableColumn(table, i < COLUMNS.length - 1 ? SWT.RIGHT : SWT.LEFT);
            column.setText(PropertyTexts.get("terrain.column." + COLUMNS[i]));
            column.setWidth(TypeScale.px(WIDTHS[i]));
        }
        QuantityFormat format = QuantityFormat.preferred();
        for (TakenPlace place : ground.places()) {
            OptionalDouble now = place.presentM();
            new TableItem(table, SWT.NONE).setText(new String[] {metres(format, place.alongM()),
                    now.isPresent() ? metres(format, now.getAsDouble()) : PropertyTexts.get("terrain.unsaid"),
                    metres(format, place.elevationM()), now.isPresent() ? metres(format, place.elevationM() - now.getAsDouble()) : "",
                    metres(format, place.accuracyM()), place.model()});
        }
        return table;
    }

    private static String metres(QuantityFormat format, double valueM) {
        return format.showWithUnit(valueM, Quantity.LENGTH);
    }
}
