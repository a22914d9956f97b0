using System.Globalization;
using System.Text;
using CushionService.Languages;
using Google.Protobuf;
using Google.Protobuf.WellKnownTypes;
using Google.Rpc;
using Grpc.Core;

namespace CushionService.Rejections;

/// <summary>A gRPC answer without a message, for calls that are rejected before they reach gRPC (gRPC over HTTP/2,
/// "Trailers-Only").</summary>
internal static class TrailersOnly
{
    private const string MediaType = "application/grpc";

    /// <summary>Whether a request is a gRPC call: one that says so, to a method of gRPC.</summary>
    public static bool Answers(HttpContext http) =>
        http.IsGrpcCall() && http.Request.ContentType?.StartsWith(MediaType, StringComparison.OrdinalIgnoreCase) == true;

    /// <summary>Writes the status, and when to try again as <c>RetryInfo</c> where the header <c>Retry-After</c> is
    /// set.</summary>
    /// <param name="http">The call.</param>
    /// <param name="code">The status.</param>
    /// <param name="message">Why, for people.</param>
    public static Task WriteAsync(HttpContext http, StatusCode code, string message)
    {
        Google.Rpc.Status status = new() { Code = (int)code, Message = message };
        if (int.TryParse(http.Response.Headers.RetryAfter, NumberStyles.None, CultureInfo.InvariantCulture, out int seconds))
        {
            status.Details.Add(Any.Pack(new RetryInfo { RetryDelay = Duration.FromTimeSpan(TimeSpan.FromSeconds(seconds)) }));
        }

        // To HTTP the call has succeeded: gRPC says in its own status what became of it.
        http.Response.StatusCode = StatusCodes.Status200OK;
        http.Response.ContentType = MediaType;
        http.Response.Headers["grpc-status"] = ((int)code).ToString(CultureInfo.InvariantCulture);
        http.Response.Headers["grpc-message"] = Encoded(message);
        http.Response.Headers["grpc-status-details-bin"] = Convert.ToBase64String(status.ToByteArray());
        return http.Response.CompleteAsync();
    }

    /// <summary>A message as gRPC sends it over HTTP/2: bytes of UTF-8, those outside of printable ASCII and the percent sign as %XX.
    /// Clients undo nothing else.</summary>
    /// <param name="message">Any text.</param>
    public static string Encoded(string message)
    {
        var text = new StringBuilder(message.Length);
        foreach (byte one in Encoding.UTF8.GetBytes(message))
        {
            _ = one is >= 0x20 and <= 0x7e and not (byte)'%'
                ? text.Append((char)one)
                : text.Append(CultureInfo.InvariantCulture, $"%{one:X2}");
        }

        return text.ToString();
    }
}
