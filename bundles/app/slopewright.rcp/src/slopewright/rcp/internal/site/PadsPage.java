package slopewright.rcp.internal.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.TextCellEditor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import slopewright.evaluation.site.NewSite;
import slopewright.evaluation.site.SiteNumber;
import slopewright.evaluation.site.SiteText;
import slopewright.evaluation.site.UnitKind;
import slopewright.model.ApproachDirection;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.rcp.internal.Messages;
import slopewright.siting.SitingException;
import slopewright.ui.AccessibleName;
import slopewright.ui.MessageTexts;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** The third step at a helipad: the planned descent, the unit that is carried there, its landing directions, and further pads. */
final class PadsPage extends DraftPage {
    private static final int[] WIDTHS = {150, 90, 90, 120, 260};
    private static final int HEIGHT = 110;

    private final List<PadRow> rows = new ArrayList<>();
    private Button portable;
    private Combo kind;
    private Label slope;
    private TableViewer pads;
    private Button remove;

    PadsPage(SiteDraft draft) {
        super("page.pads", draft);
        rows.add(PadRow.first(Messages.get("pads.first")));
    }

    @Override
    public void createControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(6).spacing(8, 7).applyTo(area);
        row(area, SiteNumber.GROUND_SPEED);
        row(area, SiteNumber.DESCENT);
        slope = new Label(area, SWT.WRAP);
        GridDataFactory.fillDefaults().span(6, 1).grab(true, false).applyTo(slope);
        portable = new Button(area, SWT.CHECK);
        portable.setText(Messages.get("pads.portable"));
        portable.addListener(SWT.Selection, event -> {
            draft().site().setPortable(portable.getSelection());
            draft().setFamilyKey(draft().site().familyKey().orElse(""));
            review();
        });
        GridDataFactory.swtDefaults().span(3, 1).applyTo(portable);
        List<String> kinds = new ArrayList<>(List.of(Messages.get("pads.any-kind")));
        Stream.of(UnitKind.values()).forEach(sample -> kinds.add(MessageTexts.of(sample.message())));
        kind = Answers.combo(area, Messages.get("pads.kind"), kinds, 0, index -> {
            if (index > 0) {
                draft().site().setKind(UnitKind.values()[index - 1]);
                draft().setFamilyKey(UnitKind.values()[index - 1].familyKey());
            }
            review();
        });
        kind.setData("question", "pads.kind");
        Answers.label(area, "");
        Label note = new Label(area, SWT.WRAP);
        note.setText(Messages.get("pads.kind-note"));
        GridDataFactory.fillDefaults().span(6, 1).hint(640, SWT.DEFAULT).applyTo(note);
        table(area);
        row(area, SiteNumber.SURVEY_REACH);
        row(area, SiteNumber.VARIATION);
        row(area, SiteNumber.SURVEY_PLACE);
        row(area, SiteNumber.VARIATION_CHANGE);
        row(area, SiteNumber.SURVEY_HEIGHT);
        text(area, "pads.variation-source", SiteText.VARIATION_SOURCE, SiteText.VARIATION_DATE);
        text(area, "pads.survey-source", SiteText.SURVEY_SOURCE, SiteText.SURVEY_DATE);
        setControl(area);
        review();
    }

    /** Asks where figures come from; their day is today until the properties say another. */
    private void text(Composite area, String key, SiteText source, SiteText day) {
        Text text = Answers.text(area, Messages.get(key), draft().site().text(source).orElse(""), words -> {
            draft().site().set(source, Answers.line(words));
            draft().site().set(day, words.isBlank() ? "" : LocalDate.now().toString());
        });
        text.setData("question", key);
        Answers.label(area, "");
    }

    private void table(Composite area) {
        pads = new TableViewer(area, SWT.BORDER | SWT.FULL_SELECTION);
        AccessibleName.give(pads.getTable(), getTitle());
        pads.getTable().setHeaderVisible(true);
        pads.getTable().setLinesVisible(true);
        pads.setContentProvider(ArrayContentProvider.getInstance());
        String unit = QuantityFormat.preferred().unit(Quantity.LENGTH);
        List<String> heads = List.of(Messages.get("pads.name"), Messages.get("pads.east", unit), Messages.get("pads.north", unit),
                Messages.get("pads.elevation", unit), Messages.get("pads.directions"));
        for (int i = 0; i < PadRow.COLUMNS; i++) {
            column(i, heads.get(i));
        }
        pads.setInput(rows);
        GridDataFactory.fillDefaults().span(6, 1).grab(true, true).hint(SWT.DEFAULT, HEIGHT).applyTo(pads.getTable());
        Composite side = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(side);
        GridDataFactory.fillDefaults().span(6, 1).applyTo(side);
        Button add = new Button(side, SWT.PUSH);
        add.setText(Messages.get("pads.add"));
        add.addListener(SWT.Selection, event -> {
            rows.add(PadRow.further(Messages.get("pads.new", rows.size() + 1), draft().site().number(SiteNumber.ELEVATION).orElse(0)));
            pads.refresh();
            review();
        });
        remove = new Button(side, SWT.PUSH);
        remove.setText(Messages.get("pads.remove"));
        remove.addListener(SWT.Selection, event -> {
            if (pads.getStructuredSelection().getFirstElement() instanceof PadRow row && !row.isFirst()) {
                rows.remove(row);
                pads.refresh();
                review();
            }
        });
    }

    private void column(int index, String head) {
        TableViewerColumn column = new TableViewerColumn(pads, SWT.NONE);
        column.getColumn().setText(head);
        column.getColumn().setWidth(WIDTHS[index]);
        column.setLabelProvider(new ColumnLabelProvider() {

            @Override
            public String getText(Object element) {
                return ((PadRow) element).text(index);
            }
        });
        column.setEditingSupport(new EditingSupport(pads) {

            @Override
            protected void setValue(Object element, Object value) {
                ((PadRow) element).type(index, String.valueOf(value));
                pads.update(element, null);
                review();
            }

            @Override
            protected Object getValue(Object element) {
                return ((PadRow) element).text(index);
            }

            @Override
            protected CellEditor getCellEditor(Object element) {
                return new TextCellEditor(pads.getTable());
            }

            @Override
            protected boolean canEdit(Object element) {
                return ((PadRow) element).isTyped(index);
            }
        });
    }

    @Override
    public void setVisible(boolean visible) {
        if (visible) {
            portable.setSelection(draft().site().isPortable());
            reload();
            review();
        }
        super.setVisible(visible);
    }

    @Override
    void review() {
        if (slope != null && kind != null) {
            portable.setSelection(draft().site().isPortable());
            slope.setText(words());
            slope.getParent().layout(true);
        }
        super.review();
    }

    /** Says which slope the descent makes. */
    private String words() {
        QuantityFormat format = QuantityFormat.preferred();
        NewSite site = draft().site();
        boolean planned = site.number(SiteNumber.GROUND_SPEED).isPresent() && site.number(SiteNumber.DESCENT).isPresent();
        try {
            OptionalDouble deg = site.slopeDeg();
            String shown = deg.isPresent() ? format.showWithUnit(deg.getAsDouble(), Quantity.ANGLE) : "-";
            return Messages.get(planned ? "pads.slope-of-descent" : "pads.slope-wanted", shown);
        } catch (SitingException e) {
            return MessageTexts.of(e.reason());
        }
    }

    @Override
    boolean isAsked(Identified element) {
        return element instanceof Helipad || element instanceof ApproachDirection;
    }

    @Override
    Optional<String> problem() {
        try {
            draft().site().furtherBearings().clear();
            draft().site().furtherPads().clear();
            draft().site().furtherBearings().addAll(rows.get(0).directions());
            rows.stream().skip(1).map(PadRow::pad).forEach(draft().site().furtherPads()::add);
            draft().site().slopeDeg();
        } catch (SitingException e) {
            return Optional.of(MessageTexts.of(e.reason()));
        } catch (IllegalArgumentException e) {
            return Optional.of(MessageTexts.reason(e));
        }
        return super.problem();
    }
}
