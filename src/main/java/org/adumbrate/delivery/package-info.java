/**
 * What is made of a prepared sheet: pictures, drawings and their order, one strip of the underlay for all that show it. What is
 * drawn is settled before.
 */
package org.adumbrate.delivery;
