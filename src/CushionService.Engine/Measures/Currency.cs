namespace CushionService.Engine.Measures;

/// <summary>A currency by its ISO 4217 code.</summary>
/// <param name="Code">Three capital letters.</param>
public readonly record struct Currency(string Code)
{
    /// <summary>Decimals of the smallest coin, by ISO 4217: 2 unless listed otherwise there.</summary>
    public int Decimals =>
        Code switch
        {
            "BIF"
            or "CLP"
            or "DJF"
            or "GNF"
            or "ISK"
            or "JPY"
            or "KMF"
            or "KRW"
            or "PYG"
            or "RWF"
            or "UGX"
            or "UYI"
            or "VND"
            or "VUV"
            or "XAF"
            or "XOF"
            or "XPF" => 0,
            "BHD" or "IQD" or "JOD" or "KWD" or "LYD" or "OMR" or "TND" => 3,
            "CLF" or "UYW" => 4,
            _ => 2,
        };
}
