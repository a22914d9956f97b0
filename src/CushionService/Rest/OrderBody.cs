using System.Buffers;
using System.IO.Pipelines;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Json;
using Microsoft.Net.Http.Headers;

namespace CushionService.Rest;

/// <summary>Reads an order from a request's body.</summary>
internal static class OrderBody
{
    /// <summary>Whether a content type is the expected media type, in UTF-8: with that charset or without
    /// one.</summary>
    /// <param name="mediaType">The expected media type.</param>
    /// <param name="contentType">The header; null when the request has none.</param>
    public static bool IsOf(string mediaType, string? contentType) =>
        contentType == mediaType
        || (
            MediaTypeHeaderValue.TryParse(contentType, out MediaTypeHeaderValue? type)
            && type.MediaType.Equals(mediaType, StringComparison.OrdinalIgnoreCase)
            // A value in quotation marks is the same value (RFC 9110, section 8.3.2).
            && (!type.Charset.HasValue || HeaderUtilities.RemoveQuotes(type.Charset).Equals("utf-8", StringComparison.OrdinalIgnoreCase))
        );

    /// <summary>Reads the whole body. One that is too long is read no further than the limit.</summary>
    /// <param name="request">The request.</param>
    /// <param name="cancellation">The caller's.</param>
    /// <returns>The order as read; null when the body is longer than <see cref="Limits.OrderBytes"/>.</returns>
    public static async ValueTask<ReceivedOrder?> ReadAsync(HttpRequest request, CancellationToken cancellation)
    {
        if (request.ContentLength > Limits.OrderBytes)
        {
            return null;
        }

        // A body without a length is counted while it arrives.
        PipeReader reader = request.BodyReader;
        while (true)
        {
            ReadResult result = await ReadOnAsync(reader, cancellation);
            ReadOnlySequence<byte> buffer = result.Buffer;
            if (buffer.Length > Limits.OrderBytes)
            {
                reader.AdvanceTo(buffer.End);
                return null;
            }

            if (result.IsCompleted)
            {
                // The buffer is the reader's: it is given back once the order has been read from it.
                try
                {
                    return OrderText.Parse(buffer.IsSingleSegment ? buffer.First : buffer.ToArray());
                }
                finally
                {
                    reader.AdvanceTo(buffer.End);
                }
            }

            reader.AdvanceTo(buffer.Start, buffer.End);
        }
    }

    /// <summary>Reads on in a body.</summary>
    /// <exception cref="BadHttpRequestException">The body does not decompress, or has a chunk of no size: the caller's error.</exception>
    /// <param name="reader">The body; what was looked at and not consumed comes again.</param>
    /// <param name="cancellation">The caller's.</param>
    public static async ValueTask<ReadResult> ReadOnAsync(PipeReader reader, CancellationToken cancellation)
    {
        try
        {
            return await reader.ReadAsync(cancellation);
        }
        catch (Exception exception) when (exception is InvalidDataException or InvalidOperationException)
        {
            throw new BadHttpRequestException("The body does not decompress.", StatusCodes.Status400BadRequest, exception);
        }
        catch (IOException exception) when (exception is not BadHttpRequestException && exception.InnerException is OverflowException)
        {
            throw new BadHttpRequestException("A chunk of the body has no size.", StatusCodes.Status400BadRequest, exception);
        }
    }
}
