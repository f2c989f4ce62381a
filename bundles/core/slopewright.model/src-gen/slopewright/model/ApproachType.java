/**
 */
package slopewright.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Approach Type</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see slopewright.model.SlopewrightPackage#getApproachType()
 * @model
 * @generated
 */
public enum ApproachType implements Enumerator {
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
	 * The '<em><b>VISUAL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #VISUAL_VALUE
	 * @generated
	 * @ordered
	 */
	VISUAL(1, "VISUAL", "VISUAL"),

	/**
	 * The '<em><b>NON PRECISION</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NON_PRECISION_VALUE
	 * @generated
	 * @ordered
	 */
	NON_PRECISION(2, "NON_PRECISION", "NON_PRECISION"),

	/**
	 * The '<em><b>PRECISION CAT I</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PRECISION_CAT_I_VALUE
	 * @generated
	 * @ordered
	 */
	PRECISION_CAT_I(3, "PRECISION_CAT_I", "PRECISION_CAT_I"),

	/**
	 * The '<em><b>PRECISION CAT II III</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PRECISION_CAT_II_III_VALUE
	 * @generated
	 * @ordered
	 */
	PRECISION_CAT_II_III(4, "PRECISION_CAT_II_III", "PRECISION_CAT_II_III");

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
	 * The '<em><b>VISUAL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #VISUAL
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int VISUAL_VALUE = 1;

	/**
	 * The '<em><b>NON PRECISION</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NON_PRECISION
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int NON_PRECISION_VALUE = 2;

	/**
	 * The '<em><b>PRECISION CAT I</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PRECISION_CAT_I
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int PRECISION_CAT_I_VALUE = 3;

	/**
	 * The '<em><b>PRECISION CAT II III</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PRECISION_CAT_II_III
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int PRECISION_CAT_II_III_VALUE = 4;

	/**
	 * An array of all the '<em><b>Approach Type</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final ApproachType[] VALUES_ARRAY =
		new ApproachType[] {
			NOT_STATED,
			VISUAL,
			NON_PRECISION,
			PRECISION_CAT_I,
			PRECISION_CAT_II_III,
		};

	/**
	 * A public read-only list of all the '<em><b>Approach Type</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<ApproachType> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Approach Type</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ApproachType get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			ApproachType result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Approach Type</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ApproachType getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			ApproachType result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Approach Type</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ApproachType get(int value) {
		switch (value) {
			case NOT_STATED_VALUE: return NOT_STATED;
			case VISUAL_VALUE: return VISUAL;
			case NON_PRECISION_VALUE: return NON_PRECISION;
			case PRECISION_CAT_I_VALUE: return PRECISION_CAT_I;
			case PRECISION_CAT_II_III_VALUE: return PRECISION_CAT_II_III;
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
	private ApproachType(int value, String name, String literal) {
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

} //ApproachType
