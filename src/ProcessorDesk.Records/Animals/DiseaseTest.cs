namespace ProcessorDesk.Records;

/// <summary>Where an animal stands with its disease test. Untested is never the same as not detected. The numbers are stored.</summary>
public enum DiseaseTest
{
    NotRequired = 1,
    NotSampled = 2,
    HunterWillCall = 3,
    Pending = 4,
    NotDetected = 5,
    Detected = 6,
}
