/**
 */
package slopewright.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Sight Hair</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see slopewright.model.SlopewrightPackage#getSightHair()
 * @model
 * @generated
 */
public enum SightHair implements Enumerator {
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
	 * The '<em><b>RED LOWER EDGE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RED_LOWER_EDGE_VALUE
	 * @generated
	 * @ordered
	 */
	RED_LOWER_EDGE(1, "RED_LOWER_EDGE", "RED_LOWER_EDGE"),

	/**
	 * The '<em><b>ON SLOPE LOWER EDGE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ON_SLOPE_LOWER_EDGE_VALUE
	 * @generated
	 * @ordered
	 */
	ON_SLOPE_LOWER_EDGE(2, "ON_SLOPE_LOWER_EDGE", "ON_SLOPE_LOWER_EDGE"),

	/**
	 * The '<em><b>SLOPE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SLOPE_VALUE
	 * @generated
	 * @ordered
	 */
	SLOPE(3, "SLOPE", "SLOPE"),

	/**
	 * The '<em><b>ON SLOPE UPPER EDGE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ON_SLOPE_UPPER_EDGE_VALUE
	 * @generated
	 * @ordered
	 */
	ON_SLOPE_UPPER_EDGE(4, "ON_SLOPE_UPPER_EDGE", "ON_SLOPE_UPPER_EDGE");

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
	 * The '<em><b>RED LOWER EDGE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RED_LOWER_EDGE
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int RED_LOWER_EDGE_VALUE = 1;

	/**
	 * The '<em><b>ON SLOPE LOWER EDGE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ON_SLOPE_LOWER_EDGE
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int ON_SLOPE_LOWER_EDGE_VALUE = 2;

	/**
	 * The '<em><b>SLOPE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SLOPE
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int SLOPE_VALUE = 3;

	/**
	 * The '<em><b>ON SLOPE UPPER EDGE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ON_SLOPE_UPPER_EDGE
	 * @model
	 * @generated
	 * @ordered
	 */
	public static final int ON_SLOPE_UPPER_EDGE_VALUE = 4;

	/**
	 * An array of all the '<em><b>Sight Hair</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final SightHair[] VALUES_ARRAY =
		new SightHair[] {
			NOT_STATED,
			RED_LOWER_EDGE,
			ON_SLOPE_LOWER_EDGE,
			SLOPE,
			ON_SLOPE_UPPER_EDGE,
		};

	/**
	 * A public read-only list of all the '<em><b>Sight Hair</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<SightHair> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Sight Hair</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SightHair get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			SightHair result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Sight Hair</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SightHair getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			SightHair result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Sight Hair</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SightHair get(int value) {
		switch (value) {
			case NOT_STATED_VALUE: return NOT_STATED;
			case RED_LOWER_EDGE_VALUE: return RED_LOWER_EDGE;
			case ON_SLOPE_LOWER_EDGE_VALUE: return ON_SLOPE_LOWER_EDGE;
			case SLOPE_VALUE: return SLOPE;
			case ON_SLOPE_UPPER_EDGE_VALUE: return ON_SLOPE_UPPER_EDGE;
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
	private SightHair(int value, String name, String literal) {
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

} //SightHair
