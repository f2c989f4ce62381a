package slopewright.ui.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.ui.views.properties.ComboBoxPropertyDescriptor;
import org.eclipse.ui.views.properties.PropertyDescriptor;
import org.eclipse.ui.views.properties.TextPropertyDescriptor;

import slopewright.edit.RecordedEdit;
import slopewright.edit.SetAttribute;
import slopewright.edit.SetReferences;
import slopewright.evaluation.ProjectRules;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.KeptValues;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;
import slopewright.ui.MessageTexts;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.units.QuantityFormat;

/** One value of an element as the property sheet and the tables of elements show, read and change it. */
public abstract class Field {

    private static final String NONE = PropertyTexts.get("field.none");

    final Identified element;
    final AttributeInfo info;

    private Object id;
    private String group;

    Field(Identified element, AttributeInfo info) {
        this.element = element;
        this.info = info;
        this.id = info.feature();
        this.group = info.group();
    }

    /** Puts a field of a part into the sheet of the whole. */
    Field in(Object newId, String newGroup) {
        id = newId;
        group = newGroup;
        return this;
    }

    Object id() {
        return id;
    }

    static Field of(Identified element, AttributeInfo info, QuantityFormat format) {
        return of(element, info, format, Projects.project(element));
    }

    /**
     * Returns the field of a feature.
     *
     * @param element the element, which need not be part of a project yet
     * @param info    one of its features
     * @param format  how numbers are shown and read
     * @param project whose elements can be referred to
     */
    public static Field of(Identified element, AttributeInfo info, QuantityFormat format, Optional<Project> project) {
        if (info.feature() instanceof EReference reference) {
            List<Identified> all = project.map(known -> Ids.elements(known, reference.getEReferenceType())).orElse(List.of());
            return reference.isMany() ? new Several(element, info, reference, all) : new Choice(element, info, targets(all));
        }
        EAttribute attribute = (EAttribute) info.feature();
        if (attribute.getEAttributeType() instanceof EEnum type) {
            return new Choice(element, info, literals(type));
        }
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        if (type == Boolean.class) {
            return new Choice(element, info, List.of(new Option(NONE, null), new Option(PropertyTexts.get("field.yes"), true),
                    new Option(PropertyTexts.get("field.no"), false)));
        }
        return switch (attribute.getName()) {
            case "familyKey" -> new Choice(element, info, keyed(Families.all().stream(), entry -> entry.name(), entry -> entry.key()));
            case "ruleSetKey" -> new Choice(element, info, keyed(Stream.concat(RuleSets.all().stream(), own(project).stream()),
                    entry -> MessageTexts.of(entry.descriptor().name()) + " (" + entry.edition() + ")",
                    Preferences::nameOf));
            default -> new Text(element, info, format, type);
        };
    }

    /** The own rule set in the folder that the project names, where it holds a sound one. */
    private static Optional<RuleSet> own(Optional<Project> project) {
        try {
            return project.flatMap(ProjectRules::own);
        } catch (IllegalArgumentException e) {
            return Optional.empty(); // what is wrong with it is said by the check, which names file and line
        }
    }

    /** Returns the value as the cell editor takes it. */
    abstract Object shown();

    /** Returns why a value of the cell editor cannot be taken, null where it can. */
    abstract String fault(Object value);

    abstract RecordedEdit edit(Object value);

    abstract PropertyDescriptor editor();

    /** Returns its name, with the unit of what is typed. */
    public String label() {
        return info.label();
    }

    /** Returns the value as it is typed, without unit; empty where there is none. */
    public abstract String typed();

    /** Returns the value as it is shown, with its unit. */
    public String text() {
        return texts().getText(shown());
    }

    /** Returns what can be chosen; empty where it is typed. */
    public List<String> choices() {
        return List.of();
    }

    abstract Object read(String text);

    /**
     * Returns the edit that gives it a value.
     *
     * @param text what was typed, or the beginning of a choice
     * @throws IllegalArgumentException where that makes no sense; the message says why
     */
    public RecordedEdit editOf(String text) {
        Object value = read(text);
        String wrong = fault(value);
        if (wrong != null) {
            throw new IllegalArgumentException(wrong);
        }
        return edit(value);
    }

    /** Returns which of some labels is meant: the one that is typed, or the only one that begins so. */
    private static int chosen(String text, List<String> labels) {
        String typed = text.strip().toLowerCase(Locale.ROOT);
        List<String> all = labels.stream().map(label -> label.toLowerCase(Locale.ROOT)).toList();
        int exact = all.indexOf(typed);
        if (exact >= 0) {
            return exact;
        }
        List<String> begun = all.stream().filter(label -> !typed.isEmpty() && label.startsWith(typed)).toList();
        if (begun.size() != 1) {
            throw new IllegalArgumentException(PropertyTexts.get("field.oneOf", text.strip(), String.join("; ", labels)));
        }
        return all.indexOf(begun.get(0));
    }

    abstract LabelProvider texts();

    PropertyDescriptor descriptor(boolean editable) {
        PropertyDescriptor descriptor = editable ? editor() : new PropertyDescriptor(id, label());
        descriptor.setCategory(group);
        descriptor.setDescription(info.help().isEmpty() ? label() : label() + ": " + info.help());
        descriptor.setLabelProvider(texts());
        descriptor.setValidator(this::fault);
        return descriptor;
    }

    private static List<Option> literals(EEnum type) {
        return type.getELiterals().stream().map(EEnumLiteral::getInstance).map(literal -> new Option(AttributeInfo.choice(literal),
                literal)).toList();
    }

    private static <T> List<Option> keyed(Stream<T> all, Function<T, String> label, Function<T, String> key) {
        List<Option> options = new ArrayList<>(List.of(new Option(NONE, null)));
        all.forEach(entry -> options.add(new Option(label.apply(entry), key.apply(entry))));
        return options;
    }

    private static List<Option> targets(List<Identified> candidates) {
        List<Option> options = new ArrayList<>(List.of(new Option(NONE, null)));
        candidates.forEach(candidate -> options.add(new Option(MessageTexts.label(candidate), candidate)));
        return options;
    }

    /** A value that can be chosen; null takes the value away. */
    record Option(String label, Object value) {
    }

    /** One of a few values. */
    private static final class Choice extends Field {

        private final List<Option> options;

        Choice(Identified element, AttributeInfo info, List<Option> known) {
            super(element, info);
            options = new ArrayList<>(known);
            Object present = element.eGet(info.feature());
            if (present != null && options.stream().noneMatch(option -> present.equals(option.value()))) {
                options.add(new Option(PropertyTexts.get("field.unknown", present), present));
            }
        }

        @Override
        Object shown() {
            Object present = element.eGet(info.feature());
            for (int i = 0; i < options.size(); i++) {
                if (Objects.equals(present, options.get(i).value())) {
                    return i;
                }
            }
            return 0;
        }

        @Override
        public String typed() {
            Option now = options.get((Integer) shown());
            return now.value() == null ? "" : now.label();
        }

        @Override
        public List<String> choices() {
            return options.stream().map(Option::label).toList();
        }

        @Override
        Object read(String text) {
            boolean none = text.isBlank() && options.get(0).value() == null;
            return none ? 0 : chosen(text, choices());
        }

        @Override
        String fault(Object value) {
            return value instanceof Integer index && index >= 0 && index < options.size() ? null : PropertyTexts.get("field.choose");
        }

        @Override
        RecordedEdit edit(Object value) {
            Object chosen = options.get((Integer) value).value();
            return info.feature() instanceof EReference reference
                    ? SetReferences.of(element, reference, chosen == null ? List.of() : List.of((EObject) chosen))
                    : SetAttribute.of(element, (EAttribute) info.feature(), chosen);
        }

        @Override
        PropertyDescriptor editor() {
            return new ComboBoxPropertyDescriptor(id(), label(), options.stream().map(Option::label).toArray(String[]::new));
        }

        @Override
        LabelProvider texts() {
            return new LabelProvider() {
                @Override
                public String getText(Object value) {
                    boolean isNone = !(value instanceof Integer index) || options.get(index).value() == null;
                    return isNone ? "" : options.get((Integer) value).label();
                }
            };
        }
    }

    /** Several elements that are referred to. */
    private static final class Several extends Field {

        private static final String BETWEEN = ";";

        private final EReference reference;
        private final List<Identified> candidates;

        Several(Identified element, AttributeInfo info, EReference reference, List<Identified> candidates) {
            super(element, info);
            this.reference = reference;
            this.candidates = candidates;
        }

        @Override
        public String typed() {
            return String.join(BETWEEN + " ", ((List<?>) shown()).stream().map(target -> MessageTexts.label((Identified) target)).toList());
        }

        @Override
        Object read(String text) {
            List<String> labels = candidates.stream().map(MessageTexts::label).toList();
            return Stream.of(text.split(BETWEEN)).filter(part -> !part.isBlank()).map(part -> candidates.get(chosen(part, labels)))
                    .toList();
        }

        @Override
        Object shown() {
            return List.copyOf((List<?>) element.eGet(reference));
        }

        @Override
        String fault(Object value) {
            return value instanceof List<?> list && list.stream().allMatch(reference.getEReferenceType()::isInstance) ? null
                    : PropertyTexts.get("field.chooseSeveral");
        }

        @Override
        RecordedEdit edit(Object value) {
            return SetReferences.of(element, reference, ((List<?>) value).stream().map(EObject.class::cast).toList());
        }

        @Override
        PropertyDescriptor editor() {
            return new PropertyDescriptor(id(), label()) {
                @Override
                public CellEditor createPropertyEditor(Composite parent) {
                    return new ReferencesCellEditor(parent, Several.this.label(), candidates);
                }
            };
        }

        @Override
        LabelProvider texts() {
            return new LabelProvider() {
                @Override
                public String getText(Object value) {
                    return ReferencesCellEditor.text(value);
                }
            };
        }
    }

    /** A text, a number or a count that is typed. */
    private static final class Text extends Field {

        /** Prose, which may have lines; a name stands in one. */
        private static final Set<String> PROSE = Set.of("remarks", "text", "reason");

        private final QuantityFormat format;
        private final Class<?> type;

        Text(Identified element, AttributeInfo info, QuantityFormat format, Class<?> type) {
            super(element, info);
            this.format = format;
            this.type = type;
        }

        @Override
        public String label() {
            return info.labelWithUnit(format);
        }

        @Override
        public String typed() {
            return String.valueOf(shown());
        }

        @Override
        Object read(String text) {
            return text;
        }

        @Override
        Object shown() {
            Object value = element.eGet(info.feature());
            return value == null ? "" : value instanceof Double number ? format.show(number, info.quantity()) : value.toString();
        }

        @Override
        String fault(Object value) {
            try {
                Object read = valueOf(value);
                return read instanceof Number number ? info.fault(number.doubleValue(), format).orElse(null)
                        : KeptValues.alien(String.valueOf(read)).map(letter -> PropertyTexts.get("field.character", letter)).orElse(null);
            } catch (IllegalArgumentException e) {
                return e.getMessage();
            }
        }

        private Object valueOf(Object value) {
            String text = String.valueOf(value).strip();
            if (text.isEmpty()) {
                return null;
            }
            if (type == Double.class) {
                return format.read(text, info.quantity());
            }
            if (type == Integer.class) {
                return count(text);
            }
            return PROSE.contains(info.feature().getName()) ? text : text.replaceAll("\\h*\\R\\s*", " ");
        }

        private static Integer count(String text) {
            try {
                return Integer.valueOf(text);
            } catch (NumberFormatException e) {
                throw new IllegalArgumentException(PropertyTexts.get("field.count", text), e);
            }
        }

        @Override
        RecordedEdit edit(Object value) {
            return SetAttribute.of(element, (EAttribute) info.feature(), valueOf(value));
        }

        @Override
        PropertyDescriptor editor() {
            return new TextPropertyDescriptor(id(), label()) {
                @Override
                public CellEditor createPropertyEditor(Composite parent) {
                    CheckedTextCellEditor editor = new CheckedTextCellEditor(parent);
                    editor.onRefusal((typed, why) -> ElementPropertyPage.refused(parent, typed, why));
                    editor.setValidator(Text.this::fault);
                    return editor;
                }
            };
        }

        @Override
        LabelProvider texts() {
            return new LabelProvider() {
                @Override
                public String getText(Object value) {
                    Object present = element.eGet(info.feature());
                    return present instanceof Double number ? format.showWithUnit(number, info.quantity()) : String.valueOf(value);
                }
            };
        }
    }
}
