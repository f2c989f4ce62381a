package slopewright.ui.elements;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.dnd.ByteArrayTransfer;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.dnd.TransferData;
import org.eclipse.swt.widgets.Display;

import slopewright.edit.AddChild;
import slopewright.model.Identified;
import slopewright.model.Named;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;

/**
 * Elements that were copied with all that they hold: within the plan and the tables and from one to the other, from one project to another.
 * Other programs see them as rows of text. What is pasted stands where it stood.
 *
 * @param kept the elements
 */
public record CopiedElements(List<Kept> kept) {

    /** Copies the list. */
    public CopiedElements {
        kept = List.copyOf(kept);
    }

    /**
     * One element.
     *
     * @param element   a copy that nothing holds
     * @param reference how what held it did so
     * @param holderId  id of what held it
     */
    public record Kept(Identified element, EReference reference, String holderId) {

        /**
         * Returns the edit that adds a copy of it. What the copy refers to is what has the same id in the project of the holder; where
         * there is nothing, it refers to nothing.
         *
         * @param holder what shall hold the copy
         * @param name   makes a name of its own of the name
         */
        public AddChild into(EObject holder, UnaryOperator<String> name) {
            Identified made = EcoreUtil.copy(element);
            Projects.project(holder).ifPresent(project -> settle(made, project));
            Ids.elements(made).forEach(part -> part.setId(null));
            if (made instanceof Named named && named.getName() != null) {
                named.setName(name.apply(named.getName()));
            }
            return AddChild.of(holder, reference, made);
        }

        private static void settle(Identified made, Project project) {
            for (Identified part : Ids.elements(made)) {
                for (EReference reference : part.eClass().getEAllReferences()) {
                    if (!reference.isContainment() && !reference.isContainer() && reference.isChangeable() && part.eIsSet(reference)) {
                        settle(part, reference, made, project);
                    }
                }
            }
        }

        private static void settle(Identified part, EReference reference, Identified made, Project project) {
            List<EObject> there = new ArrayList<>();
            List<?> all = reference.isMany() ? List.copyOf((List<?>) part.eGet(reference)) : List.of(part.eGet(reference));
            for (Object target : all) {
                if (EcoreUtil.isAncestor(made, (EObject) target)) {
                    there.add((EObject) target);
                } else {
                    Ids.find(project, ((Identified) target).getId()).filter(found -> reference.getEReferenceType().isInstance(found))
                            .ifPresent(there::add);
                }
            }
            part.eSet(reference, reference.isMany() ? there : there.stream().findFirst().orElse(null));
        }
    }

    /** Copies elements that something holds. */
    public static CopiedElements of(List<Identified> elements) {
        return new CopiedElements(elements.stream().map(element -> new Kept(EcoreUtil.copy(element), element.eContainmentFeature(),
                ((Identified) element.eContainer()).getId())).toList());
    }

    /**
     * Puts them on the clipboard.
     *
     * @param text what other programs see; blank for nothing
     */
    public void copy(String text) {
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        try {
            if (text.isBlank()) {
                clipboard.setContents(new Object[] {this}, new Transfer[] {OwnTransfer.ONLY});
            } else {
                clipboard.setContents(new Object[] {this, text}, new Transfer[] {OwnTransfer.ONLY, TextTransfer.getInstance()});
            }
        } finally {
            clipboard.dispose();
        }
    }

    /** Returns what is on the clipboard, empty where it is something else, or of another run of the program. */
    public static Optional<CopiedElements> onClipboard() {
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        try {
            return clipboard.getContents(OwnTransfer.ONLY) instanceof CopiedElements found ? Optional.of(found) : Optional.empty();
        } finally {
            clipboard.dispose();
        }
    }

    /** The elements stay in this program; the clipboard only says that they are the ones that were copied last. */
    private static final class OwnTransfer extends ByteArrayTransfer {

        private static final OwnTransfer ONLY = new OwnTransfer();
        private static final String TYPE = "slopewright-elements";

        private final int type = registerType(TYPE);
        private final String run = TYPE + " " + System.identityHashCode(this) + " " + ProcessHandle.current().pid();
        private Optional<CopiedElements> last = Optional.empty();

        @Override
        protected int[] getTypeIds() {
            return new int[] {type};
        }

        @Override
        protected String[] getTypeNames() {
            return new String[] {TYPE};
        }

        @Override
        protected void javaToNative(Object object, TransferData data) {
            last = object instanceof CopiedElements copied ? Optional.of(copied) : Optional.empty();
            super.javaToNative(run.getBytes(StandardCharsets.UTF_8), data);
        }

        @Override
        protected Object nativeToJava(TransferData data) {
            Object bytes = super.nativeToJava(data);
            boolean isOwn = bytes instanceof byte[] read && run.equals(new String(read, StandardCharsets.UTF_8));
            return isOwn ? last.orElse(null) : null;
        }
    }
}
