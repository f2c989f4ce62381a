/**
 */
package slopewright.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Plate Sense</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see slopewright.model.SlopewrightPackage#getPlateSense()
 * @model
 * @generated
 */
public enum PlateSense implements Enumerator {
	/**
	 * The '<em><b>NOT STATED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NOT_STATED_VALUE
	 * @generated
	 * @ordered
	 */
	NOT_STATED(0, "NOT_STATED", "NOT_STATED"),

	/**
	 * The '<em><b>CLOCKWISE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CLOCKWISE_VALUE
	 * @generated
	 * @ordered
	 */
	CLOCKWISE(1, "CLOCKWISE", "CLOCKWISE"),

	/**
	 * The '<em><b>ANTICLOCKWISE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ANTICLOCKWISE_VALUE
	 * @generated
	 * @ordered
	 */
	ANTICLOCKWISE(2, "ANTICLOCKWISE", "ANTICLOCKWISE");

	/**
	 * The '<em><b>NOT STATED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NOT_STATED
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int NOT_STATED_VALUE = 0;

	/**
	 * The '<em><b>CLOCKWISE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CLOCKWISE
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int CLOCKWISE_VALUE = 1;

	/**
	 * The '<em><b>ANTICLOCKWISE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ANTICLOCKWISE
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int ANTICLOCKWISE_VALUE = 2;

	/**
	 * An array of all the '<em><b>Plate Sense</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final PlateSense[] VALUES_ARRAY =
		new PlateSense[] {
			NOT_STATED,
			CLOCKWISE,
			ANTICLOCKWISE,
		};

	/**
	 * A public read-only list of all the '<em><b>Plate Sense</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<PlateSense> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Plate Sense</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PlateSense get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PlateSense result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Plate Sense</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PlateSense getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PlateSense result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Plate Sense</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PlateSense get(int value) {
		switch (value) {
			case NOT_STATED_VALUE: return NOT_STATED;
			case CLOCKWISE_VALUE: return CLOCKWISE;
			case ANTICLOCKWISE_VALUE: return ANTICLOCKWISE;
		}
		return null;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final int value;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String name;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String literal;

	/**
	 * Only this class can construct instances.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private PlateSense(int value, String name, String literal) {
		this.value = value;
		this.name = name;
		this.literal = literal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getValue() {
	  return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
	  return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLiteral() {
	  return literal;
	}

	/**
	 * Returns the literal value of the enumerator, which is its string representation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		return literal;
	}

} //PlateSense
