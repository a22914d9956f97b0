using System.Collections.Frozen;
using System.Collections.Immutable;
using Grpc.Core;

namespace CushionService.Contract;

/// <summary>Every code that a caller may meet. A new one is a row here and a sentence in <c>CodeTexts.resx</c>; the OpenAPI document, the
/// pages at <c>/problems/</c>, the guide's page of codes and the comments of the protos are made of these rows.</summary>
internal static class CodeRegister
{
    /// <summary>The codes, by name.</summary>
    public static ImmutableArray<Code> All { get; } =
    [
        Code.Problem("authority-away", 503, StatusCode.Unavailable, CodeTexts.AuthorityAway, maySendAgain: true),
        Code.Violation("bad-encoding", 400, StatusCode.InvalidArgument, CodeTexts.BadEncoding),
        Code.Rule("bad-form", CodeTexts.BadForm),
        Code.Problem("bad-request", 400, StatusCode.InvalidArgument, CodeTexts.BadRequest),
        Code.Warning("bias-costs-more", CodeTexts.BiasCostsMore),
        Code.Caution("blades-and-irons", CodeTexts.BladesAndIrons),
        Code.Either("busy", 503, StatusCode.Unavailable, CodeTexts.Busy, maySendAgain: true),
        Code.Caution("buttons", CodeTexts.Buttons),
        Code.Warning("closure-shows", CodeTexts.ClosureShows),
        Code.Warning("coated-without-vents", CodeTexts.CoatedWithoutVents),
        Code.Warning("cord-thick-for-boxing", CodeTexts.CordThickForBoxing),
        Code.Warning("cord-thick-for-seam", CodeTexts.CordThickForSeam),
        Code.Rule("document-too-long", CodeTexts.DocumentTooLong),
        Code.Rule("duplicate", CodeTexts.Duplicate),
        Code.Rule("duplicate-field", CodeTexts.DuplicateField),
        Code.Rule("empty", CodeTexts.Empty),
        Code.Rule("empty-order", CodeTexts.EmptyOrder),
        Code.Warning("firm-above-soft", CodeTexts.FirmAboveSoft),
        Code.Caution("flammability", CodeTexts.Flammability),
        Code.Caution("foam", CodeTexts.Foam),
        Code.Warning("foam-half-described", CodeTexts.FoamHalfDescribed),
        Code.Warning("foam-joined", CodeTexts.FoamJoined),
        Code.Warning("foam-too-large", CodeTexts.FoamTooLarge),
        Code.Warning("foam-too-large-for-coated", CodeTexts.FoamTooLargeForCoated),
        Code.Problem("forbidden", 403, StatusCode.PermissionDenied, CodeTexts.Forbidden),
        Code.Warning("form-size", CodeTexts.FormSize),
        Code.Warning("grain-chosen", CodeTexts.GrainChosen),
        Code.Caution("handle-load", CodeTexts.HandleLoad),
        Code.Warning("hem-eats-strip", CodeTexts.HemEatsStrip),
        Code.Rule("hem-too-deep", CodeTexts.HemTooDeep),
        Code.Caution("infants", CodeTexts.Infants),
        Code.Either("internal", 500, StatusCode.Internal, CodeTexts.Internal),
        Code.Problem("invalid-order", 422, StatusCode.InvalidArgument, CodeTexts.InvalidOrder),
        Code.Warning("joined-face", CodeTexts.JoinedFace),
        Code.Rule("lap-too-deep", CodeTexts.LapTooDeep),
        Code.Caution("local-codes", CodeTexts.LocalCodes),
        Code.Warning("long-ties", CodeTexts.LongTies),
        Code.Problem("method-not-allowed", 405, StatusCode.Unimplemented, CodeTexts.MethodNotAllowed),
        Code.Warning("motif-unknown", CodeTexts.MotifUnknown),
        Code.Rule("not-a-length", CodeTexts.NotALength),
        Code.Rule("not-a-quantity", CodeTexts.NotAQuantity),
        Code.Rule("not-a-shape", CodeTexts.NotAShape),
        Code.Problem("not-acceptable", 406, StatusCode.InvalidArgument, CodeTexts.NotAcceptable),
        Code.Violation("not-allowed", 403, StatusCode.PermissionDenied, CodeTexts.NotAllowed),
        Code.Rule("not-applicable", CodeTexts.NotApplicable),
        Code.Rule("not-combinable", CodeTexts.NotCombinable),
        Code.Rule("not-finite", CodeTexts.NotFinite),
        Code.Problem("not-found", 404, StatusCode.NotFound, CodeTexts.NotFound),
        Code.Violation("not-json", 400, StatusCode.InvalidArgument, CodeTexts.NotJson),
        Code.Warning("not-matched", CodeTexts.NotMatched),
        Code.Rule("not-rising", CodeTexts.NotRising),
        Code.Warning("not-stocked", CodeTexts.NotStocked),
        Code.Warning("one-way-fabric", CodeTexts.OneWayFabric),
        Code.Warning("opening-too-small", CodeTexts.OpeningTooSmall),
        Code.Either("order-too-long", 413, StatusCode.ResourceExhausted, CodeTexts.OrderTooLong),
        Code.Rule("out-of-range", CodeTexts.OutOfRange),
        Code.Warning("overedge-too-wide", CodeTexts.OveredgeTooWide),
        Code.Warning("overfilled", CodeTexts.Overfilled),
        Code.Rule("overlap-too-deep", CodeTexts.OverlapTooDeep),
        Code.Rule("overlap-too-narrow", CodeTexts.OverlapTooNarrow),
        Code.Warning("price-without-size", CodeTexts.PriceWithoutSize),
        Code.Warning("print-inverted", CodeTexts.PrintInverted),
        Code.Rule("required", CodeTexts.Required),
        Code.Warning("returns-shortened", CodeTexts.ReturnsShortened),
        Code.Warning("seam-too-deep", CodeTexts.SeamTooDeep),
        Code.Warning("several-cuts", CodeTexts.SeveralCuts),
        Code.Warning("several-lots", CodeTexts.SeveralLots),
        Code.Warning("shrinkage-unknown", CodeTexts.ShrinkageUnknown),
        Code.Rule("side-too-short", CodeTexts.SideTooShort),
        Code.Caution("small-parts", CodeTexts.SmallParts),
        Code.Warning("straight-welt-on-curve", CodeTexts.StraightWeltOnCurve),
        Code.Warning("tapered-edging", CodeTexts.TaperedEdging),
        Code.Caution("ties-and-cords", CodeTexts.TiesAndCords),
        Code.Violation("too-deep", 400, StatusCode.InvalidArgument, CodeTexts.TooDeep),
        Code.Warning("too-little-brought", CodeTexts.TooLittleBrought),
        Code.Rule("too-long", CodeTexts.TooLong),
        Code.Rule("too-many-labels", CodeTexts.TooManyLabels),
        Code.Rule("too-many-pieces", CodeTexts.TooManyPieces),
        Code.Problem("too-many-requests", 429, StatusCode.ResourceExhausted, CodeTexts.TooManyRequests, maySendAgain: true),
        Code.Rule("too-many-sheets", CodeTexts.TooManySheets),
        Code.Either("too-slow", 422, StatusCode.DeadlineExceeded, CodeTexts.TooSlow),
        Code.Rule("tufts-too-close", CodeTexts.TuftsTooClose),
        Code.Problem("unauthorized", 401, StatusCode.Unauthenticated, CodeTexts.Unauthorized),
        Code.Rule("unknown-cushion", CodeTexts.UnknownCushion),
        Code.Rule("unknown-fabric", CodeTexts.UnknownFabric),
        Code.Rule("unknown-field", CodeTexts.UnknownField),
        Code.Rule("unknown-price-book", CodeTexts.UnknownPriceBook),
        Code.Rule("unknown-stock", CodeTexts.UnknownStock),
        Code.Rule("unknown-value", CodeTexts.UnknownValue),
        Code.Warning("unpriced", CodeTexts.Unpriced),
        Code.Problem("unreadable-order", 400, StatusCode.InvalidArgument, CodeTexts.UnreadableOrder),
        Code.Problem("unsupported-media-type", 415, StatusCode.InvalidArgument, CodeTexts.UnsupportedMediaType),
        Code.Warning("unused-fabric", CodeTexts.UnusedFabric),
        Code.Rule("wider-than-fabric", CodeTexts.WiderThanFabric),
        Code.Rule("wrong-currency", CodeTexts.WrongCurrency),
        Code.Violation("wrong-type", 400, StatusCode.InvalidArgument, CodeTexts.WrongType),
        Code.Warning("zipper-too-short", CodeTexts.ZipperTooShort),
    ];

    private static readonly FrozenDictionary<string, Code> ByName = All.ToFrozenDictionary(code => code.Name);

    /// <summary>A code by its name; null where there is none.</summary>
    public static Code? Find(string name) => ByName.GetValueOrDefault(name);

    /// <summary>The codes with a use, by name.</summary>
    public static IEnumerable<Code> For(CodeUse use) => All.Where(code => (code.Uses & use) != 0);

    /// <summary>The code of a call that ends with an HTTP status, where nothing more is known: that of the fault which the status
    /// is for.</summary>
    /// <param name="status">400 to 599.</param>
    public static string OfStatus(int status) =>
        status switch
        {
            StatusCodes.Status401Unauthorized => "unauthorized",
            StatusCodes.Status403Forbidden => "forbidden",
            StatusCodes.Status404NotFound => "not-found",
            StatusCodes.Status405MethodNotAllowed => "method-not-allowed",
            StatusCodes.Status406NotAcceptable => "not-acceptable",
            StatusCodes.Status413PayloadTooLarge => "order-too-long",
            StatusCodes.Status415UnsupportedMediaType => "unsupported-media-type",
            StatusCodes.Status422UnprocessableEntity => "invalid-order",
            StatusCodes.Status429TooManyRequests => "too-many-requests",
            StatusCodes.Status503ServiceUnavailable => "busy",
            < StatusCodes.Status500InternalServerError => "bad-request",
            _ => "internal",
        };
}
