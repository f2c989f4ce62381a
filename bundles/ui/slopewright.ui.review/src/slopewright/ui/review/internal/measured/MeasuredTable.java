package slopewright.ui.review.internal.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;

import slopewright.edit.AddChild;
import slopewright.edit.Compound;
import slopewright.edit.RecordedEdit;
import slopewright.edit.SetAttribute;
import slopewright.evaluation.asbuilt.AsBuilt;
import slopewright.model.ApproachAid;
import slopewright.model.MeasuredUnit;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.ui.properties.AttributeInfo;
import slopewright.ui.properties.CheckedTextCellEditor;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.theme.TypeScale;
import slopewright.ui.units.QuantityFormat;

/** The units of an aid with planned and measured values; what was measured is typed into the cells. */
public final class MeasuredTable {

    private final TableViewer viewer;
    private final LocalResourceManager resources;
    private final Consumer<RecordedEdit> edits;
    private final Consumer<String> refusals;
    private Optional<AsBuilt> built = Optional.empty();

    /**
     * Makes the table.
     *
     * @param parent   where it goes
     * @param edits    receives what the user types
     * @param refusals is told why what was typed into a cell that is left was not taken
     */
    public MeasuredTable(Composite parent, Consumer<RecordedEdit> edits, Consumer<String> refusals) {
        this.edits = edits;
        this.refusals = refusals;
        viewer = new TableViewer(parent, SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        resources = new LocalResourceManager(JFaceResources.getResources(), viewer.getControl());
        viewer.getTable().setHeaderVisible(true);
        viewer.getTable().setLinesVisible(true);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        for (MeasuredColumn column : MeasuredColumn.values()) {
            TableViewerColumn made = new TableViewerColumn(viewer, SWT.LEFT);
            made.getColumn().setText(column.title());
            made.getColumn().setWidth(Math.max(TypeScale.px(column.width()), TypeScale.headingPx(viewer.getTable(), column.title())));
            made.setLabelProvider(new Labels(column));
            column.typed().ifPresent(attribute -> made.setEditingSupport(new Cell(column, attribute)));
        }
        viewer.setInput(List.of());
    }

    private final class Labels extends ColumnLabelProvider {

        private final MeasuredColumn column;

        Labels(MeasuredColumn column) {
            this.column = column;
        }

        @Override
        public String getText(Object element) {
            return column.text((MeasuredRow) element, built, QuantityFormat.preferred());
        }

        @Override
        public Image getImage(Object element) {
            return image(column, (MeasuredRow) element);
        }
    }

    private Image image(MeasuredColumn column, MeasuredRow row) {
        return column == MeasuredColumn.VERDICT ? row.result().map(unit -> MeasuredColumn.image(unit.verdict()).image(resources))
                .orElse(null) : null;
    }

    private final class Cell extends EditingSupport {

        private final MeasuredColumn column;
        private final EAttribute attribute;
        private final AttributeInfo info;
        private final CellEditor editor;

        Cell(MeasuredColumn column, EAttribute attribute) {
            super(viewer);
            this.column = column;
            this.attribute = attribute;
            this.info = AttributeInfo.of(Literals.MEASURED_UNIT, attribute);
            CheckedTextCellEditor checked = new CheckedTextCellEditor(viewer.getTable());
            checked.setValidator(this::fault);
            checked.onRefusal((typed, why) -> refusals.accept(Messages.get("measured.refused", column.title(), why)));
            this.editor = checked;
        }

        @Override
        protected CellEditor getCellEditor(Object element) {
            return editor;
        }

        private Object read(Object text) {
            String typed = String.valueOf(text).strip();
            if (typed.isEmpty()) {
                return null;
            }
            boolean number = attribute.getEAttributeType().getInstanceClass() == Double.class;
            return number ? (Object) QuantityFormat.preferred().read(typed, info.quantity()) : typed;
        }

        private String fault(Object text) {
            try {
                return read(text) instanceof Double number ? info.fault(number, QuantityFormat.preferred()).orElse(null) : null;
            } catch (IllegalArgumentException e) {
                return e.getMessage();
            }
        }

        @Override
        protected boolean canEdit(Object element) {
            return true;
        }

        @Override
        protected Object getValue(Object element) {
            return column.typedText((MeasuredRow) element, QuantityFormat.preferred());
        }

        @Override
        protected void setValue(Object element, Object text) {
            if (text == null || text.equals(getValue(element)) || fault(text) != null) {
                return;
            }
            MeasuredRow row = (MeasuredRow) element;
            List<RecordedEdit> parts = new ArrayList<>();
            MeasuredUnit measured = row.measured().orElseGet(() -> {
                MeasuredUnit made = SlopewrightFactory.eINSTANCE.createMeasuredUnit();
                parts.add(AddChild.of(row.unit(), Literals.LIGHT_UNIT__MEASURED, made));
                return made;
            });
            parts.add(SetAttribute.of(measured, attribute, read(text)));
            edits.accept(Compound.of(Messages.get("edit.measured", row.unit().getLabel()), parts));
        }
    }

    /** Shows an aid as it was built; a cell that is open stays open, and the others say what holds now. */
    public void show(Optional<ApproachAid> aid, Optional<AsBuilt> result) {
        built = result;
        if (viewer.isCellEditorActive()) {
            aid.ifPresent(measured -> write(MeasuredRow.of(measured, result)));
            return;
        }
        int selected = viewer.getTable().getSelectionIndex();
        viewer.setInput(aid.map(measured -> MeasuredRow.of(measured, result)).orElse(List.of()));
        viewer.getTable().setSelection(selected);
    }

    private void write(List<MeasuredRow> rows) {
        for (int i = 0; i < Math.min(rows.size(), viewer.getTable().getItemCount()); i++) {
            MeasuredRow row = rows.get(i);
            if (((MeasuredRow) viewer.getElementAt(i)).unit() == row.unit()) {
                for (MeasuredColumn column : MeasuredColumn.values()) {
                    viewer.getTable().getItem(i).setText(column.ordinal(), column.text(row, built, QuantityFormat.preferred()));
                    viewer.getTable().getItem(i).setImage(column.ordinal(), image(column, row));
                }
            }
        }
    }

    /** Returns the id of the unit of the selected row. */
    public Optional<String> selectedId() {
        return Optional.ofNullable((MeasuredRow) viewer.getStructuredSelection().getFirstElement()).map(row -> row.unit().getId());
    }

    /** Returns the viewer. */
    public TableViewer viewer() {
        return viewer;
    }
}
