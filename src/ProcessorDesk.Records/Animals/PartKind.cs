namespace ProcessorDesk.Records;

/// <summary>Things of an animal that go back as themselves. The numbers are stored.</summary>
public enum PartKind
{
    Antlers = 1,
    Cape = 2,
    Hide = 3,
    Head = 4,
    Heart = 5,
    Liver = 6,
    Other = 7,
}
