package org.barreltally.gifts;

/**
 * Who orders and pays; kept where it can be removed.
 *
 * @param details further words; may be null
 */
public record Buyer(String name, String email, String phone, Address address, String details) {}
