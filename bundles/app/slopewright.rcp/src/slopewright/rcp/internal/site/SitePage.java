package slopewright.rcp.internal.site;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;

import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

import slopewright.evaluation.site.SiteNumber;
import slopewright.evaluation.site.SiteText;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachType;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.rcp.internal.Messages;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;
import slopewright.ui.MessageTexts;
import slopewright.ui.preferences.Preferences;

/** The first step: where the approach is, and to what. */
final class SitePage extends DraftPage {

    private static final List<ApproachType> TYPES = List.of(ApproachType.VISUAL, ApproachType.NON_PRECISION, ApproachType.PRECISION_CAT_I,
            ApproachType.PRECISION_CAT_II_III);
    private static final List<SiteNumber> ASKED = List.of(SiteNumber.LATITUDE, SiteNumber.LONGITUDE, SiteNumber.EPOCH,
            SiteNumber.ELEVATION, SiteNumber.BEARING, SiteNumber.LENGTH, SiteNumber.WIDTH, SiteNumber.OTHER_ELEVATION, SiteNumber.FATO);
    private static final int CODES = 4;

    private final List<Templates.Template> templates = Templates.all();
    private Combo start;
    private Combo kind;
    private Combo rules;
    private Combo code;
    private Combo approach;
    private Text name;
    private Text designator;
    private Optional<String> unread = Optional.empty();
    private int started;

    SitePage(SiteDraft draft) {
        super("page.site", draft);
    }

    @Override
    public void createControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(6).spacing(8, 7).applyTo(area);
        List<String> starts = new ArrayList<>(List.of(Messages.get("template.empty")));
        templates.forEach(template -> starts.add(template.label()));
        starts.add(Messages.get("template.runway-data"));
        start = combo(area, "site.start", starts, 0, this::start);
        kind = combo(area, "site.kind", List.of(Messages.get("site.runway"), Messages.get("site.helipad")), 0, index -> {
            draft().site().setHelipad(index == 1);
            draft().setFamilyKey("");
        });
        name = text(area, "site.name", draft().site().name(), draft().site()::setName);
        designator = text(area, "site.designator", draft().site().designator(), draft().site()::setDesignator);
        List<RuleSet> all = RuleSets.all();
        rules = combo(area, "site.rules", all.stream().map(set -> MessageTexts.of(set.descriptor().name()) + ", "
                + set.edition()).toList(), ruleIndex(),
                index -> draft().site().setRuleSet(Preferences.nameOf(all.get(index))));
        approach = combo(area, "site.approach", TYPES.stream().map(type -> Messages.get("approach." + type.getName())).toList(), 0,
                index -> draft().site().setApproach(TYPES.get(index)));
        List<String> codes = new ArrayList<>();
        for (int i = 1; i <= CODES; i++) {
            codes.add(String.valueOf(i));
        }
        code = combo(area, "site.code", codes, draft().site().code() - 1, index -> draft().site().setCode(index + 1));
        text(area, "site.author", draft().site().text(SiteText.AUTHOR).orElse(""), words -> draft().site().set(SiteText.AUTHOR, words));
        ASKED.forEach(number -> row(area, number));
        text(area, "site.datum", draft().site().text(SiteText.VERTICAL_DATUM).orElse(""),
                words -> draft().site().set(SiteText.VERTICAL_DATUM, words));
        setControl(area);
        review();
    }

    private Combo combo(Composite area, String key, List<String> choices, int first, IntConsumer chosen) {
        Combo combo = Answers.combo(area, Messages.get(key), choices, first, index -> {
            chosen.accept(index);
            review();
        });
        combo.setData("question", key);
        Answers.label(area, "");
        return combo;
    }

    private Text text(Composite area, String key, String first, Consumer<String> typed) {
        Text text = Answers.text(area, Messages.get(key), first, words -> {
            typed.accept(Answers.line(words));
            review();
        });
        text.setData("question", key);
        Answers.label(area, "");
        return text;
    }

    private int ruleIndex() {
        return Math.max(0, RuleSets.all().stream().map(Preferences::nameOf).toList().indexOf(draft().site().ruleSet()));
    }

    private void start(int index) {
        unread = Optional.empty();
        if (index > templates.size()) {
            RunwayDataDialog dialog = new RunwayDataDialog(getShell());
            if (dialog.open() != Window.OK) {
                start.select(started);
                return;
            }
            draft().start(dialog.chosen().orElseThrow());
        } else if (index > 0) {
            try {
                draft().start(templates.get(index - 1).load());
            } catch (IOException e) {
                unread = Optional.of(MessageTexts.reason(e));
            }
        }
        started = index;
        kind.select(draft().site().isHelipad() ? 1 : 0);
        rules.select(ruleIndex());
        code.select(draft().site().code() - 1);
        approach.select(Math.max(0, TYPES.indexOf(draft().site().approach())));
        name.setText(draft().site().name());
        designator.setText(draft().site().designator());
        reload();
    }

    @Override
    void review() {
        if (approach != null && code != null) {
            code.setEnabled(!draft().site().isHelipad());
            approach.setEnabled(!draft().site().isHelipad());
        }
        if (designator != null && !designator.isFocusControl() && !Answers.line(designator.getText()).equals(draft().site().designator())) {
            designator.setText(draft().site().designator());
        }
        super.review();
    }

    @Override
    Optional<String> problem() {
        if (draft().site().name().isBlank()) {
            return Optional.of(Messages.get("site.needed", Messages.get("site.name")));
        }
        if (draft().site().designator().isBlank()) {
            return Optional.of(Messages.get("site.needed", Messages.get("site.designator")));
        }
        return unread.or(super::problem).or(draft()::designatorProblem).or(draft()::placeProblem);
    }

    @Override
    boolean isAsked(Identified element) {
        return element instanceof Runway || element instanceof RunwayEnd || element instanceof Helipad || element instanceof Aerodrome;
    }
}
