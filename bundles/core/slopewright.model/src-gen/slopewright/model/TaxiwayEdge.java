/**
 */
package slopewright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Taxiway Edge</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.TaxiwayEdge#getKind <em>Kind</em>}</li>
 *   <li>{@link slopewright.model.TaxiwayEdge#getPoints <em>Points</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getTaxiwayEdge()
 * @model
 * @generated
 */
public interface TaxiwayEdge extends Named {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.EdgeKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see slopewright.model.EdgeKind
	 * @see #setKind(EdgeKind)
	 * @see slopewright.model.SlopewrightPackage#getTaxiwayEdge_Kind()
	 * @model
	 * @generated
	 */
	EdgeKind getKind();

	/**
	 * Sets the value of the '{@link slopewright.model.TaxiwayEdge#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see slopewright.model.EdgeKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(EdgeKind value);

	/**
	 * Returns the value of the '<em><b>Points</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.Place}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Points</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getTaxiwayEdge_Points()
	 * @model containment="true"
	 * @generated
	 */
	EList<Place> getPoints();

} // TaxiwayEdge
