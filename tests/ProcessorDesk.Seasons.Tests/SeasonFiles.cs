using ProcessorDesk.Records;
using ProcessorDesk.Seasons.Tests.Generating;

namespace ProcessorDesk.Seasons.Tests;

/// <summary>Files of small seasons, in a folder that goes with them.</summary>
public sealed class SeasonFiles : IDisposable
{
    public const int Seed = 1;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("processor-desk-seasons-");

    public SeasonFiles() => Small = Fill("small", Seed);

    /// <summary>For reading alone.</summary>
    public string Small { get; }

    public string Fill(string name, int seed)
    {
        var path = Path.Combine(_folder.CreateSubdirectory(name).FullName, RecordsFile.Name);
        SeasonGenerator.Fill(path, SeasonSize.Small, seed);
        return path;
    }

    public void Dispose() => _folder.Delete(recursive: true);
}
