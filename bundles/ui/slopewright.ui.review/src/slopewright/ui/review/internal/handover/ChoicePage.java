package slopewright.ui.review.internal.handover;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

import slopewright.report.PaperSize;
import slopewright.report.handover.HandoverFile;
import slopewright.ui.AccessibleName;
import slopewright.ui.MessageTexts;
import slopewright.ui.review.internal.Messages;

/** What is handed over, where it goes, on which paper, in which language and with which date. */
public final class ChoicePage extends WizardPage {

    private final HandoverPlan plan;
    private Tree tree;
    private Text folder;

    /** Makes the page. */
    public ChoicePage(HandoverPlan plan) {
        super("choice", Messages.get("handover.choice"), null);
        this.plan = plan;
        setDescription(Messages.get("handover.choice.about"));
    }

    @Override
    public void createControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(3).margins(8, 8).applyTo(area);
        tree = new Tree(area, SWT.CHECK | SWT.BORDER | SWT.V_SCROLL);
        AccessibleName.give(tree, getTitle());
        GridDataFactory.fillDefaults().grab(true, true).span(3, 1).hint(420, 220).applyTo(tree);
        fillTree();
        tree.addListener(SWT.Selection, event -> {
            if (event.detail == SWT.CHECK) {
                checked((TreeItem) event.item);
            }
        });
        createButtons(area);
        createWhere(area);
        setControl(area);
        update();
    }

    private void fillTree() {
        Map<String, List<HandoverFile>> bySubject = plan.offered().stream()
                .collect(Collectors.groupingBy(file -> MessageTexts.of(file.subject()), LinkedHashMap::new, Collectors.toList()));
        bySubject.forEach((subject, files) -> {
            TreeItem heading = new TreeItem(tree, SWT.NONE);
            heading.setText(subject.isEmpty() ? Messages.get("handover.whole") : subject);
            for (HandoverFile file : files) {
                TreeItem item = new TreeItem(heading, SWT.NONE);
                item.setText(HandoverPlan.label(file) + "  (" + file.extension().toUpperCase(Locale.ROOT) + ")");
                item.setData(file);
                item.setChecked(plan.wanted().contains(file));
            }
            heading.setExpanded(subject.isEmpty() || bySubject.size() <= 3);
            mark(heading);
        });
    }

    /** A heading is ticked where all below it are, and grey where some are. */
    private static void mark(TreeItem heading) {
        long ticked = Stream.of(heading.getItems()).filter(TreeItem::getChecked).count();
        heading.setChecked(ticked > 0);
        heading.setGrayed(ticked > 0 && ticked < heading.getItemCount());
    }

    private void checked(TreeItem item) {
        if (item.getParentItem() == null) {
            item.setGrayed(false);
            Stream.of(item.getItems()).forEach(child -> child.setChecked(item.getChecked()));
        } else {
            mark(item.getParentItem());
        }
        take();
    }

    private void take() {
        Set<HandoverFile> ticked = new LinkedHashSet<>();
        for (TreeItem heading : tree.getItems()) {
            Stream.of(heading.getItems()).filter(TreeItem::getChecked).map(TreeItem::getData).map(HandoverFile.class::cast)
                    .forEach(ticked::add);
        }
        plan.want(ticked);
        update();
    }

    private void createButtons(Composite area) {
        Composite row = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().span(3, 1).applyTo(row);
        RowLayoutFactory.fillDefaults().spacing(6).applyTo(row);
        button(row, "handover.usual", HandoverFile::usual);
        button(row, "handover.all", file -> true);
        button(row, "handover.none", file -> false);
    }

    private void button(Composite row, String key, Predicate<HandoverFile> ticked) {
        Button button = new Button(row, SWT.PUSH);
        button.setText(Messages.get(key));
        button.addListener(SWT.Selection, event -> {
            for (TreeItem heading : tree.getItems()) {
                Stream.of(heading.getItems()).forEach(item -> item.setChecked(ticked.test((HandoverFile) item.getData())));
                mark(heading);
            }
            take();
        });
    }

    private void createWhere(Composite area) {
        new Label(area, SWT.NONE).setText(Messages.get("handover.folder"));
        folder = new Text(area, SWT.BORDER);
        folder.setText(plan.folder());
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(folder);
        folder.addListener(SWT.FocusIn, event -> folder.selectAll());
        folder.addListener(SWT.Modify, event -> {
            plan.folder(folder.getText());
            update();
        });
        Button browse = new Button(area, SWT.PUSH);
        browse.setText(Messages.get("handover.browse"));
        browse.addListener(SWT.Selection, event -> browse());
        new Label(area, SWT.NONE).setText(Messages.get("handover.date"));
        Text date = new Text(area, SWT.BORDER);
        date.setText(plan.date());
        date.setToolTipText(Messages.get("handover.date.tip"));
        GridDataFactory.fillDefaults().hint(120, SWT.DEFAULT).align(SWT.BEGINNING, SWT.CENTER).span(2, 1).applyTo(date);
        date.addListener(SWT.Modify, event -> {
            plan.date(date.getText());
            update();
        });
        new Label(area, SWT.NONE).setText(Messages.get("handover.paper"));
        Combo paper = new Combo(area, SWT.READ_ONLY);
        paper.setItems(Stream.of(PaperSize.values()).map(PaperSize::key).toArray(String[]::new));
        paper.select(plan.paper().ordinal());
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).span(2, 1).applyTo(paper);
        paper.addListener(SWT.Selection, event -> plan.paper(PaperSize.values()[paper.getSelectionIndex()]));
        new Label(area, SWT.NONE).setText(Messages.get("handover.language"));
        Combo language = new Combo(area, SWT.READ_ONLY);
        List<Locale> languages = List.of(Locale.ENGLISH, Locale.GERMAN);
        language.setItems(languages.stream().map(each -> each.getDisplayLanguage(each)).toArray(String[]::new));
        language.select(Math.max(0, languages.indexOf(plan.language())));
        language.setToolTipText(Messages.get("handover.language.tip"));
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).span(2, 1).applyTo(language);
        language.addListener(SWT.Selection, event -> plan.language(languages.get(language.getSelectionIndex())));
    }

    private void browse() {
        DirectoryDialog dialog = new DirectoryDialog(getShell());
        dialog.setFilterPath(folder.getText());
        String chosen = dialog.open();
        if (chosen != null) {
            folder.setText(chosen);
        }
    }

    private void update() {
        String problem = plan.problem();
        setErrorMessage(problem.isEmpty() ? null : problem);
        setPageComplete(problem.isEmpty());
        setMessage(Messages.get("handover.count", plan.wanted().size()));
    }
}
