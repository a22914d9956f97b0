using System.Net;
using System.Net.Sockets;

namespace CushionService.Access;

/// <summary>The address that a caller without a key is known by.</summary>
internal static class CallerAddress
{
    /// <summary>The address of a call. A household or a machine has a whole /64 of addresses of version 6 (RFC 6177), and
    /// counts as one.</summary>
    /// <param name="http">The call, its address already taken from a known proxy.</param>
    public static string Of(HttpContext http) => http.Connection.RemoteIpAddress is { } address ? Of(address) : "no address";

    /// <summary>The same of an address.</summary>
    /// <param name="address">Of either version.</param>
    public static string Of(IPAddress address)
    {
        if (address.AddressFamily == AddressFamily.InterNetwork || address.IsIPv4MappedToIPv6)
        {
            return address.IsIPv4MappedToIPv6 ? address.MapToIPv4().ToString() : address.ToString();
        }

        // The first 64 bits are kept.
        byte[] bytes = address.GetAddressBytes();
        bytes.AsSpan(8).Clear();
        return new IPAddress(bytes).ToString();
    }
}
