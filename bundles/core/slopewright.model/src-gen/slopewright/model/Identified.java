/**
 */
package slopewright.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Identified</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.Identified#getId <em>Id</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getIdentified()
 * @model abstract="true"
 * @generated
 */
public interface Identified extends EObject {
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see slopewright.model.SlopewrightPackage#getIdentified_Id()
	 * @model id="true" transient="true"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link slopewright.model.Identified#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

} // Identified
